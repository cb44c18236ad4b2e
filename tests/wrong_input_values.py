"""Values that mean nothing.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import BEADS, CLOTH, FINISH, MOSS, PATTERN, SERIES, TINY
from tests.wrong_input_case import KEY_LINE, Case

CASES = (
    Case(
        "a count to the centimetre",
        {CLOTH: ("count: 28", "count: 12.5 threads per cm")},
        "cloths/hopsack-28.yaml:3:8: 'count' is '12.5 threads per cm', which is not a number; write 32, which is so many to the inch",
    ),
    Case(
        "a count to the centimetre, shorter",
        {CLOTH: ("count: 28", "count: 11/cm")},
        "cloths/hopsack-28.yaml:3:8: 'count' is '11/cm', which is not a number; write 28, which is so many to the inch",
    ),
    Case(
        "a thread card that is a list",
        {MOSS: "- name: Moss\n"},
        "threads/moss.yaml:1:1: this file should hold a thread card, line by line; begin each line with a name, as in name: Larkmoss Stranded",
    ),
    Case(
        "a thread card that is one word",
        {MOSS: "Moss\n"},
        "threads/moss.yaml:1:1: this file should hold a thread card, line by line; begin each line with a name, as in name: Larkmoss Stranded",
    ),
    Case(
        "a count in threads to the centimetre",
        {
            CLOTH: TINY[CLOTH]
            .replace("Hopsack 28", "Hopsack 32")
            .replace("count: 28", "count: 12.6")
        },
        "cloths/hopsack-28.yaml:3:8: advice: the count is 12.6, and the cloth is called 'Hopsack 32'; 12.6 to the centimetre are 32 to the inch: write count: 32",
    ),
    Case(
        "the count of the cloth whose file was copied",
        {CLOTH: ("name: Hopsack 28", "name: Hopsack 32")},
        "cloths/hopsack-28.yaml:3:8: advice: the count is 28, and the cloth is called 'Hopsack 32'; if the name is right, write count: 32; else mend the name",
    ),
    Case(
        "the stitches of linen over two as its count",
        {CLOTH: TINY[CLOTH].replace("count: 28", "count: 14")},
        "cloths/hopsack-28.yaml:3:8: advice: the count is 14, and the cloth is called 'Hopsack 28'; write count: 28, its threads; over: 2 says that a stitch covers 2 of them",
    ),
    Case(
        "the strands that go into the needle on the thread card",
        {MOSS: ("strands: 6", "strands: 2")},
        "series/garden-year/series.yaml:6:39: advice: by its card 'Moss Stranded' parts into 2 strands, and all of them go into the needle; if it parts into more, as most stranded cotton into 6, mend 'strands' in threads/moss.yaml",
    ),
    Case(
        "the stitches of an evenweave, whose name has no number, for its threads",
        {
            CLOTH: (
                "name: Hopsack 28\nweave: evenweave\ncount: 28",
                "name: Hopsack\nweave: evenweave\ncount: 14",
            )
        },
        "cloths/hopsack-28.yaml:3:8: advice: evenweave with 14 threads to the inch, of which a stitch covers 2, is hardly woven; look once more: if it has 14 stitches to the inch, write count: 28",
    ),
    Case(
        "aida with the digits of its count turned round",
        {
            CLOTH: TINY[CLOTH].replace(
                "name: Hopsack 28\nweave: evenweave\ncount: 28\nover: 2",
                "name: Hopsack\nweave: aida\ncount: 41\nover: 1",
            )
        },
        "cloths/hopsack-28.yaml:3:8: advice: aida with 41 blocks to the inch is hardly woven; look once more: aida has 6 to 22, most often 14, 16 or 18; finer cloth has weave: evenweave",
    ),
    Case(
        "a name misspelt",
        {MOSS: ("length: 8 m", "lenght: 8 m")},
        "threads/moss.yaml:6:1: 'lenght' is not part of a thread card; did you mean 'length'?",
    ),
    Case(
        "a name missing",
        {MOSS: ("length: 8 m\n", "")},
        "threads/moss.yaml:1:1: 'length' is missing in a thread card; add a line, for example length: 8 m",
    ),
    Case(
        "a value missing",
        {MOSS: ("length: 8 m", "length:")},
        "threads/moss.yaml:6:8: 'length' has no value; write one, for example length: 8 m",
    ),
    Case(
        "a value of nothing between quotes",
        {MOSS: ("length: 8 m", "length: ''")},
        "threads/moss.yaml:6:10: 'length' is '', which is not a length; write a number and its unit, for example length: 8 m",
    ),
    Case(
        "a list where one value is due",
        {MOSS: ("length: 8 m", "length: [8 m]")},
        "threads/moss.yaml:6:9: 'length' has a list, and needs one value; write for example length: 8 m",
    ),
    Case(
        "names in a title",
        {PATTERN: ("title: Fern by the Tap", "title: {Fern}")},
        "series/garden-year/fern/pattern.yaml:1:8: 'title' has a group of names with values, and needs one value; write for example title: Robin on the Spade",
    ),
    Case(
        "one value where a list is due",
        {SERIES: ("order: [fern]", "order: fern")},
        "series/garden-year/series.yaml:13:8: 'order' should be a list, and is 'fern'; put brackets round it, or a dash before each entry, for example order: [fern]",
    ),
    Case(
        "a card copied to begin another, and only its name changed",
        {"threads/reed.yaml": TINY[MOSS].replace("Moss Stranded", "Reed Stranded")},
        "threads/reed.yaml:9:3: advice: the 3 colours of 'Reed Stranded' are those of 'Moss Stranded', in number, name and hex; write its own; or lay this aside where one maker sells the same colours in two ways",
    ),
    Case(
        "aida without the threads that a stitch covers",
        {
            CLOTH: TINY[CLOTH]
            .replace("Hopsack 28", "Aida 14")
            .replace("weave: evenweave", "weave: aida")
            .replace("count: 28", "count: 14")
            .replace("over: 2\n", "")
        },
        "cloths/hopsack-28.yaml:1:1: 'over' is missing in a cloth; add a line, for example over: 1",
    ),
    Case(
        "a cloth and its colour as they are said",
        {
            PATTERN: (
                "cloths:\n  - {cloth: hopsack-28, colour: frost}\n",
                "cloths: hopsack-28 frost\n",
            )
        },
        "series/garden-year/fern/pattern.yaml:5:9: 'cloths' should be a list, and is 'hopsack-28 frost'; write cloths: [{cloth: hopsack-28, colour: frost}]",
    ),
    Case(
        "two cloths and their colours as they are said",
        {
            PATTERN: (
                "cloths:\n  - {cloth: hopsack-28, colour: frost}\n",
                "cloths: hopsack-28 frost, hopsack-28 oatmeal\n",
            )
        },
        "series/garden-year/fern/pattern.yaml:5:9: 'cloths' should be a list, and is 'hopsack-28 frost, hopsack-28 oatmeal'; write cloths: [{cloth: hopsack-28, colour: frost}, {cloth: hopsack-28, colour: oatmeal}]",
    ),
    Case(
        "a cloth and its colour as they are said, behind a dash",
        {PATTERN: ("- {cloth: hopsack-28, colour: frost}", "- hopsack-28, frost")},
        "series/garden-year/fern/pattern.yaml:6:5: an entry of 'cloths' should be made of names with values, and is 'hopsack-28, frost'; write for example - {cloth: hopsack-28, colour: frost}",
    ),
    Case(
        "names where a list is due",
        {SERIES: ("order: [fern]", "order: {fern: 1}")},
        "series/garden-year/series.yaml:13:8: 'order' should be a list, and is a group of names with values; put brackets round it, or a dash before each entry, for example order: [robin-on-the-spade]",
    ),
    Case(
        "one value where names are due",
        {
            PATTERN: (
                "occasion: {name: First warm day, on: second Sunday of May}",
                "occasion: May Day",
            )
        },
        "series/garden-year/fern/pattern.yaml:4:11: 'occasion' should be made of names with values, and is 'May Day'; write for example occasion: {name: May Day, on: 6 January}",
    ),
    Case(
        "an occasion and its day as one text",
        {
            PATTERN: (
                "occasion: {name: First warm day, on: second Sunday of May}",
                "occasion: Twelfth Night, 6 January",
            )
        },
        "series/garden-year/fern/pattern.yaml:4:11: 'occasion' should be made of names with values, and is 'Twelfth Night, 6 January'; write for example occasion: {name: Twelfth Night, on: 6 January}",
    ),
    Case(
        "a key line without its braces and colons",
        {PATTERN: ('r: {moss: E2, spool: "10"}', "r: moss E2, spool 10")},
        """series/garden-year/fern/pattern.yaml:9:6: 'r' should be made of names with values, and is 'moss E2, spool 10'; write for example r: {moss: "E2", spool: "10"}""",
    ),
    Case(
        "a way of stitching without its name",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10", half}')},
        "series/garden-year/fern/pattern.yaml:9:30: 'half' is no thread set and not part of a key line; write stitch: half",
    ),
    Case(
        "an occasion's day for all of it",
        {PATTERN: ("{name: First warm day, on: second Sunday of May}", "second Sunday of May")},
        "series/garden-year/fern/pattern.yaml:4:11: 'occasion' should be made of names with values, and is 'second Sunday of May'; write for example occasion: {name: Twelfth Night, on: second Sunday of May}",
    ),
    Case(
        "a key line with a bare number",
        {PATTERN: ('r: {moss: E2, spool: "10"}', "r: E2")},
        """series/garden-year/fern/pattern.yaml:9:6: 'r' should be made of names with values, and is 'E2'; write for example r: {moss: "E2"}""",
    ),
    Case(
        "a list where names are due",
        {PATTERN: ("credits: {model_stitcher: Hazel Penn}", "credits: [Hazel]")},
        "series/garden-year/fern/pattern.yaml:23:10: 'credits' should be made of names with values, and is a list; write for example credits: {model_stitcher: Maud Fennimore}",
    ),
    Case(
        "a word where the key is due",
        {PATTERN: ("key:\n  r:", "key: red\nkex:\n  r:")},
        "series/garden-year/fern/pattern.yaml:8:6: 'key' should hold key lines, and is 'red'; write for example key: {r: {larkmoss: E2}}",
        "series/garden-year/fern/pattern.yaml:9:1: 'kex' is not part of a pattern; did you mean 'key'?",
    ),
    Case(
        "one number of strands for all thread sets",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10", strands: 1}')},
        "series/garden-year/fern/pattern.yaml:9:39: 'strands' should hold a number for each thread set, and is '1'; write for example strands: {moss: 1}",
    ),
    Case(
        "a series without patterns",
        {SERIES: ("order: [fern]", "order: []")},
        "series/garden-year/series.yaml:13:8: 'order' has no entries; write at least one, for example order: [robin-on-the-spade]",
    ),
    Case(
        "a list far too long",
        {FINISH: ("cautions: [small magnets, dust]", f"cautions: [{'dust, ' * 2001}]")},
        "finishes/shelf/finish.yaml:26:11: 'cautions' has 2001 entries; 2000 is the most that can be used",
    ),
    Case(
        "curly quotes round a title",
        {PATTERN: ("title: Fern by the Tap", "title: “Fern by the Tap”")},
        "series/garden-year/fern/pattern.yaml:1:8: '“Fern by the Tap”' stands between curly quotes; use straight ones: \"Fern by the Tap\"",
    ),
    Case(
        "a title over two lines",
        {PATTERN: ("title: Fern by the Tap", "title: |\n  Fern\n  by the Tap")},
        "series/garden-year/fern/pattern.yaml:2:3: 'title' runs over several lines; write it on one line",
    ),
    Case(
        "a title too long",
        {PATTERN: ("title: Fern by the Tap", "title: " + "Fern " * 40)},
        "series/garden-year/fern/pattern.yaml:1:8: 'title' is 199 characters long; shorten it to 100",
    ),
    Case(
        "an id with a space in it",
        {SERIES: ("id: alder", "id: Wren Alder")},
        "series/garden-year/series.yaml:9:9: 'id' is 'Wren Alder', which cannot be part of a file name; use small letters, digits and hyphens, for example 'wren-alder'",
    ),
    Case(
        "half a strand",
        {MOSS: ("strands: 6", "strands: 6.5")},
        "threads/moss.yaml:3:10: 'strands' is '6.5', which is not a whole number; write a whole number from 1 to 12, in plain digits",
    ),
    Case(
        "a number in words",
        {MOSS: ("strands: 6", "strands: six")},
        "threads/moss.yaml:3:10: 'strands' is 'six', which is not a whole number; write 6",
    ),
    Case(
        "a number in scientific writing",
        {BEADS: ("packet: 300", "packet: 1e3")},
        "beads/drop.yaml:3:9: 'packet' is '1e3', which is not a whole number; write a whole number from 1 to 100000, in plain digits",
    ),
    Case(
        "a word for a number",
        {MOSS: ("tex: 25", "tex: heavy")},
        "threads/moss.yaml:4:6: 'tex' is 'heavy', which is not a number; write a number from 1 to 2000, in plain digits",
    ),
    Case(
        "a decimal comma",
        {MOSS: ("tex: 25", "tex: 25,5")},
        "threads/moss.yaml:4:6: '25,5' has a comma in its number; write a full stop: '25.5'",
    ),
    Case(
        "a decimal comma before a unit",
        {BEADS: ("2.2 mm", "2,2 mm")},
        "beads/drop.yaml:2:7: '2,2 mm' has a comma in its number; write a full stop: '2.2 mm'",
    ),
    Case(
        "a cloth whose author forgot the count: it is asked for, and nothing guesses it",
        {CLOTH: ("count: 28\n", "")},
        "cloths/hopsack-28.yaml:1:1: 'count' is missing in a cloth; add a line, for example count: 32",
    ),
    Case(
        "a cloth far too fine",
        {CLOTH: ("count: 28", "count: 280")},
        "cloths/hopsack-28.yaml:3:8: 'count' is '280', beyond what can be right; it goes from 5 to 60",
    ),
    Case(
        "a stitch over three threads",
        {CLOTH: ("over: 2", "over: 3")},
        "cloths/hopsack-28.yaml:4:7: 'over' is '3', beyond what can be right; it goes from 1 to 2",
    ),
    Case(
        "a paint with a nought too many",
        {"finishes/shelf/finish.yaml": ("covers: 10 m2", "covers: 100 m2")},
        "finishes/shelf/finish.yaml:21:13: 'covers' is '100 m2 per litre', beyond what can be right; it goes from 0.1 m2 per litre to 50 m2 per litre; did you mean 10 m2 per litre?",
    ),
    Case(
        "a skein of eight millimetres",
        {MOSS: ("length: 8 m", "length: 8 mm")},
        "threads/moss.yaml:6:9: 'length' is '8 mm', beyond what can be right; it goes from 0.1 m to 5000 m; did you mean 8 m?",
    ),
    Case(
        "a length without a unit",
        {MOSS: ("length: 8 m", "length: 8")},
        "threads/moss.yaml:6:9: 'length' is '8', without a unit; write the unit, for example '8 m'",
    ),
    Case(
        "a length with an unknown unit",
        {MOSS: ("length: 8 m", "length: 8 mtr")},
        "threads/moss.yaml:6:11: 'mtr' is not a unit for 'length'; known here: cm, in, m, mm, yd",
    ),
    Case(
        "a length from one number to another",
        {MOSS: ("length: 8 m", "length: 8 - 10 metres")},
        "threads/moss.yaml:6:9: 'length' is '8 - 10 metres', and a length is one number with its unit; write one only, for example 10 m",
    ),
    Case(
        "a coverage with an unknown unit",
        {FINISH: ("10 m2 per litre", "10 m2 a litre")},
        "finishes/shelf/finish.yaml:21:16: 'm2 a litre' is not a unit for 'covers'; did you mean 'm2 per litre'?",
    ),
    Case(
        "a length in words",
        {MOSS: ("length: 8 m", "length: long")},
        "threads/moss.yaml:6:9: 'length' is 'long', which is not a length; write a number and its unit, for example length: 8 m",
    ),
    Case(
        "a fraction over nought",
        {MOSS: ("length: 8 m", "length: 8/0 m")},
        "threads/moss.yaml:6:9: 'length' is '8/0 m', which is not a length; write a number and its unit, for example length: 8 m",
    ),
    Case(
        "a weave misspelt",
        {CLOTH: ("weave: evenweave", "weave: evenwave")},
        "cloths/hopsack-28.yaml:2:8: 'weave' cannot be 'evenwave'; did you mean 'evenweave'?",
    ),
    Case(
        "a word that two cautions have",
        {FINISH: ("cautions: [small magnets, dust]", "cautions: [magnets, paint]")},
        "finishes/shelf/finish.yaml:26:12: an entry of 'cautions' cannot be 'magnets'; did you mean 'small magnets'?",
        "finishes/shelf/finish.yaml:26:21: an entry of 'cautions' cannot be 'paint'; did you mean 'spray paint' or 'brush paint'?",
    ),
    Case(
        "cautions that the tool does not know",
        {FINISH: ("cautions: [small magnets, dust]", "cautions: [small magnet, wolves]")},
        "finishes/shelf/finish.yaml:26:12: an entry of 'cautions' cannot be 'small magnet'; did you mean 'small magnets'?",
        "finishes/shelf/finish.yaml:26:26: an entry of 'cautions' cannot be 'wolves'; did you mean 'solvents'?",
    ),
    Case(
        "neither true nor false",
        {MOSS: ("dyed: plain", "dyed: plain\nbraid: perhaps")},
        "threads/moss.yaml:8:8: 'braid' is 'perhaps'; write true or false",
    ),
    Case(
        "a colour with a wrong letter",
        {MOSS: ('"#4f7942"', '"#4f794g"')},
        "threads/moss.yaml:11:38: 'hex' is '#4f794g', which is not a colour of six digits or letters a to f; write six after the sign #, for example \"#6b503a\"",
    ),
    *(
        Case(
            f"a colour of {len(digits)} digits",
            {MOSS: ('"#4f7942"', f'"#{digits}"')},
            f"threads/moss.yaml:11:38: 'hex' is '#{digits}', which is not a colour of six digits or letters a to f; here are {len(digits)} after the sign #: write six, as in \"#6b503a\"",
        )
        for digits in ("4f794", "4f79422")
    ),
    Case(
        "a colour of three digits",
        {MOSS: ('"#4f7942"', '"#4f7"')},
        "threads/moss.yaml:11:38: 'hex' is '#4f7', which is not a colour of six digits or letters a to f; write all six: \"#44ff77\"",
    ),
    Case(
        "a colour without its sign",
        {MOSS: ('"#4f7942"', '"4f7942"')},
        "threads/moss.yaml:11:38: 'hex' is '4f7942', which is not a colour of six digits or letters a to f; write the sign # before it: \"#4f7942\"",
    ),
    Case(
        "a web address without https",
        {SERIES: ("https://alder.example/alder", "alder.example/alder")},
        "series/garden-year/series.yaml:12:11: 'alder.example/alder' is not a web address; write https://alder.example/alder",
    ),
    Case(
        "a link that would run a program",
        {PATTERN: ("url: https://alder.example/by-fern", "url: javascript:alert(1)")},
        "series/garden-year/fern/pattern.yaml:25:34: a link may not start with 'javascript:'; use an address that starts with https://",
    ),
    Case(
        "a web address with a space",
        {SERIES: ("https://alder.example/alder", "https://example org/alder")},
        "series/garden-year/series.yaml:12:11: 'https://example org/alder' is not a web address; take the spaces out of it",
    ),
    Case(
        "a mail address for a shop",
        {SERIES: ("https://alder.example/alder", "mailto:wren@example.org")},
        "series/garden-year/series.yaml:12:11: a link may not start with 'mailto:'; use an address that starts with https://",
    ),
    Case(
        "a date in words",
        {PATTERN: ("date: 2026-11-25", "date: 25 November 2026")},
        "series/garden-year/fern/pattern.yaml:27:12: '25 November 2026' is not a date; write 2026-11-25",
    ),
    Case(
        "a date of the last century",
        {PATTERN: ("date: 2026-11-25", "date: 1926-11-25")},
        "series/garden-year/fern/pattern.yaml:27:12: the year 1926 in '1926-11-25' cannot be right; it goes from 2000 to 2100",
    ),
    Case(
        "a day that does not exist",
        {PATTERN: ("date: 2026-11-25", "date: 2026-02-30")},
        "series/garden-year/fern/pattern.yaml:27:12: there is no day '2026-02-30'; February 2026 has 28 days",
    ),
    Case(
        "a month that does not exist",
        {PATTERN: ("date: 2026-11-25", "date: 2026-13-01")},
        "series/garden-year/fern/pattern.yaml:27:12: there is no day '2026-13-01'; months go from 01 to 12; did you mean 2026-01-13?",
    ),
    Case(
        "a release without a time zone",
        {SERIES: ("2027-01-15 09:00 Europe/London", "2027-01-15 09:00")},
        "series/garden-year/series.yaml:3:10: '2027-01-15 09:00' is neither a day nor a day with hour and place; write 2027-01-15, or with hour and place 2027-01-15 09:00 Europe/London",
    ),
    Case(
        "a time zone misspelt",
        {SERIES: ("2027-01-15 09:00 Europe/London", "2027-01-15 09:00 Europe/Londno")},
        "series/garden-year/series.yaml:3:27: 'Europe/Londno' is not a time zone; did you mean 'Europe/London'?",
    ),
    Case(
        "a time zone that is a country",
        {SERIES: ("2027-01-15 09:00 Europe/London", "2027-01-15 09:00 UK")},
        "series/garden-year/series.yaml:3:27: 'UK' is not a time zone; write region and city, for example Europe/London",
    ),
    Case(
        "an hour that does not exist",
        {SERIES: ("2027-01-15 09:00 Europe/London", "2027-01-15 24:00 Europe/London")},
        "series/garden-year/series.yaml:3:21: there is no time '24:00' on that day; hours go from 00 to 23, minutes from 00 to 59",
    ),
    Case(
        "a time that the clocks leap over",
        {SERIES: ("2027-01-15 09:00 Europe/London", "2027-03-28 01:30 Europe/London")},
        "series/garden-year/series.yaml:3:21: there is no time '01:30' on that day; the clocks go forward that day; write 02:30",
    ),
    Case(
        "a release on a day that does not exist",
        {SERIES: ("2027-01-15 09:00 Europe/London", "2027-02-30 09:00 Europe/London")},
        "series/garden-year/series.yaml:3:10: there is no day '2027-02-30'; February 2027 has 28 days",
    ),
    Case(
        "a release in words",
        {SERIES: ("2027-01-15 09:00 Europe/London", "on 1 May 2027 at 10:30")},
        "series/garden-year/series.yaml:3:10: 'on 1 May 2027 at 10:30' is neither a day nor a day with hour and place; write 2027-05-01, or with hour and place 2027-05-01 10:30 Europe/London",
    ),
    Case(
        "a date in words, the month first",
        {PATTERN: ("date: 2026-11-25", "date: November 25th 2026")},
        "series/garden-year/fern/pattern.yaml:27:12: 'November 25th 2026' is not a date; write 2026-11-25",
    ),
    Case(
        "a date without its noughts",
        {PATTERN: ("date: 2026-11-25", "date: 2026-7-1")},
        "series/garden-year/fern/pattern.yaml:27:12: '2026-7-1' is not a date; write 2026-07-01",
    ),
    Case(
        "a count with its unit",
        {CLOTH: ("count: 28", "count: 28ct")},
        "cloths/hopsack-28.yaml:3:8: 'count' is '28ct', which is not a number; write 28",
    ),
    Case(
        "a number of strands with a word behind it",
        {MOSS: ("strands: 6", "strands: 6 strands")},
        "threads/moss.yaml:3:10: 'strands' is '6 strands', which is not a whole number; write 6",
    ),
    Case(
        "a size with its unit, a comma in it",
        {MOSS: ("tex: 25", "tex: 12,5 tex")},
        "threads/moss.yaml:4:6: 'tex' is '12,5 tex', which is not a number; write 12.5",
    ),
    Case(
        "a number of strands that cannot be, with a word behind it",
        {MOSS: ("strands: 6", "strands: 600 strands")},
        "threads/moss.yaml:3:10: 'strands' is '600 strands', which is not a whole number; write a whole number from 1 to 12, in plain digits",
    ),
    Case(
        "a date as it is written in other countries",
        {PATTERN: ("date: 2026-11-25", "date: 25.11.2026")},
        "series/garden-year/fern/pattern.yaml:27:12: '25.11.2026' is not a date; write 2026-11-25",
    ),
    Case(
        "such a date that does not exist",
        {PATTERN: ("date: 2026-11-25", "date: 31.02.2026")},
        "series/garden-year/fern/pattern.yaml:27:12: there is no day '31.02.2026'; February 2026 has 28 days; write it like 2026-11-25",
    ),
    Case(
        "a release in words on a day that does not exist",
        {SERIES: ("2027-01-15 09:00 Europe/London", "30 February 2027")},
        "series/garden-year/series.yaml:3:10: there is no day '30 February 2027'; February 2027 has 28 days; write it like 2027-01-15, or 2027-01-15 09:00 Europe/London",
    ),
    Case(
        "a release without a time zone, on a day and at a time that do not exist",
        {SERIES: ("2027-01-15 09:00 Europe/London", "2027-04-31 25:00")},
        "series/garden-year/series.yaml:3:10: there is no day '2027-04-31'; April has 30 days; write it like 2027-01-15, or 2027-01-15 09:00 Europe/London",
        "series/garden-year/series.yaml:3:21: there is no time '25:00' on that day; hours go from 00 to 23, minutes from 00 to 59; write it like 2027-01-15, or 2027-01-15 09:00 Europe/London",
    ),
    Case(
        "a date in words that does not exist",
        {PATTERN: ("date: 2026-11-25", "date: Nov. 31st 2026")},
        "series/garden-year/fern/pattern.yaml:27:12: there is no day 'Nov. 31st 2026'; November has 30 days; write it like 2026-11-25",
    ),
    Case(
        "an occasion of one year, on a day that does not exist",
        {PATTERN: ("second Sunday of May", "the 31st of September 2027")},
        "series/garden-year/fern/pattern.yaml:4:42: there is no day '31st of September 2027'; September has 30 days; write it like '6 January' or 'second Sunday of May'",
    ),
    Case(
        "an occasion without a day",
        {PATTERN: ("second Sunday of May", "sometime in May")},
        "series/garden-year/fern/pattern.yaml:4:38: 'sometime in May' is not a day that comes every year; write it like '6 January', 'second Sunday of May', '21 days before Easter', 'June solstice', 'in May' or 'spring'",
    ),
    Case(
        "an occasion on 31 June",
        {PATTERN: ("second Sunday of May", "31 June")},
        "series/garden-year/fern/pattern.yaml:4:38: there is no day '31 June'; June has 30 days",
    ),
    Case(
        "an occasion on 29 February",
        {PATTERN: ("second Sunday of May", "29 February")},
        "series/garden-year/fern/pattern.yaml:4:38: '29 February' does not come every year; choose 28 February or 1 March",
    ),
    Case(
        "an occasion on 30 February",
        {PATTERN: ("second Sunday of May", "30 February")},
        "series/garden-year/fern/pattern.yaml:4:38: there is no day '30 February'; February has 29 days at most",
    ),
    Case(
        "an occasion on a fifth Sunday",
        {PATTERN: ("second Sunday of May", "fifth Sunday of May")},
        "series/garden-year/fern/pattern.yaml:4:38: 'fifth Sunday of May' does not come every year; choose first to fourth, or last",
    ),
    Case(
        "an occasion on a sixth Sunday",
        {PATTERN: ("second Sunday of May", "sixth Sunday of May")},
        "series/garden-year/fern/pattern.yaml:4:38: 'sixth' is not a count; known here: first, fourth, last, second, third",
    ),
    Case(
        "a weekday misspelt",
        {PATTERN: ("second Sunday of May", "second Sonday of May")},
        "series/garden-year/fern/pattern.yaml:4:45: 'Sonday' is not a weekday; did you mean 'Sunday'?",
    ),
    Case(
        "a month misspelt",
        {PATTERN: ("second Sunday of May", "6 Januray")},
        "series/garden-year/fern/pattern.yaml:4:40: 'Januray' is not a month; did you mean 'January'?",
    ),
    Case(
        "an occasion too far from Easter",
        {PATTERN: ("second Sunday of May", "300 days before Easter")},
        "series/garden-year/fern/pattern.yaml:4:38: '300 days before Easter' is too far from Easter; stay within 150 days, or name the day itself",
    ),
    Case(
        "linen over one thread for over two",
        {CLOTH: ("over: 2", "over: 1")},
        "cloths/hopsack-28.yaml:4:7: advice: with over: 1 each stitch covers a single thread of 28 to the inch, and so is much smaller than usual; evenweave so fine has over: 2; where one pattern wants it otherwise, write over in that pattern's cloth choice",
    ),
    Case(
        "an outline of two corners",
        {FINISH: ("outline: 0,0 100,0 100,100 0,100", "outline: 0,0 100,0")},
        "finishes/shelf/finish.yaml:4:12: an outline with 2 corners; give three or more",
    ),
    Case(
        "a rectangle of two corners",
        {FINISH: ("outline: 0,0 100,0 100,100 0,100", "outline: 2,4 100,90")},
        "finishes/shelf/finish.yaml:4:12: an outline with 2 corners; give three or more; as a rectangle from one to the other '2,4 100,4 100,90 2,90', and as one of 100 × 90 mm from the first '2,4 102,4 102,94 2,94'",
    ),
    Case(
        "magnets that are none, with what speaks of them",
        {FINISH: ("magnets: {pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: 15 mm}\n", "")},
        "finishes/shelf/finish.yaml:25:12: advice: here stands 'small magnets', and this piece has no magnets; take that out; or add a line, for example magnets: {pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: 15 mm}",
    ),
    Case(
        "a word for no magnets",
        {
            FINISH: (
                "magnets: {pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: 15 mm}",
                "magnets: none",
            )
        },
        "finishes/shelf/finish.yaml:25:10: 'magnets' is 'none'; take this line away where there is none",
    ),
    Case(
        "a day whose month can only be one of its numbers",
        {PATTERN: ("date: 2026-11-25", "date: 15-03-2027")},
        "series/garden-year/fern/pattern.yaml:27:12: '15-03-2027' is not a date; write 2027-03-15",
    ),
    Case(
        "a revision on a day that may be two",
        {PATTERN: ("date: 2026-11-25", "date: 6/3/2027")},
        "series/garden-year/fern/pattern.yaml:27:12: '6/3/2027' is not a date; write 2027-03-06 for 6 March or 2027-06-03 for 3 June",
    ),
    Case(
        "a panel of which one corner has lost a figure, and that crosses itself by it",
        {FINISH: ("outline: 0,0 100,0 100,100 0,100", "outline: 0,20 100,20 100,10 0,100")},
        "finishes/shelf/finish.yaml:4:12: the outline crosses itself: side 1 runs over side 3; write 100,100 for 100,10: it is a rectangle then",
    ),
    Case(
        "an outline that crosses itself",
        {FINISH: ("outline: 0,0 100,0 100,100 0,100", "outline: 0,0 100,100 100,0 0,100")},
        "finishes/shelf/finish.yaml:4:12: the outline crosses itself: side 1 runs over side 3; two corners have changed places; write '0,0 100,0 100,100 0,100'",
    ),
    Case(
        "an outline of which four corners have changed places",
        {FINISH: ("outline: 0,0 100,0 100,100 0,100", "outline: 50,0 100,100 100,30 0,30 0,100")},
        "finishes/shelf/finish.yaml:4:12: the outline crosses itself: side 1 runs over side 3; give the corners in order round the shape",
    ),
    Case(
        "an outline without an area",
        {FINISH: ("outline: 0,0 100,0 100,100 0,100", "outline: 0,0 100,0 50,0")},
        "finishes/shelf/finish.yaml:4:12: the outline has no area: its corners lie on one line; move a corner away from that line",
    ),
    Case(
        "an outline a hundred metres wide",
        {FINISH: ("outline: 0,0 100,0 100,100 0,100", "outline: 0,0 100000,0 50,50")},
        "finishes/shelf/finish.yaml:4:12: 'outline' is '0,0 100000,0 50,50', beyond what can be right; it goes from -5000 mm to 5000 mm",
    ),
    Case(
        "a name misspelt in a notice",
        {SERIES: ("date: 2026-11-20, title: Linen", "date: 2026-11-20, titel: Linen")},
        "series/garden-year/series.yaml:18:24: 'titel' is not part of a notice; did you mean 'title'?",
    ),
    Case(
        "an entry of a list that is one word",
        {SERIES: ("  - {name: spool, card: spool, strands: 1}", "  - spool")},
        "series/garden-year/series.yaml:7:5: an entry of 'thread_sets' should be made of names with values, and is 'spool'; write for example - {name: larkmoss, card: larkmoss, strands: 2}",
    ),
    Case(
        "a number of a thread set missing in a key line",
        {PATTERN: ('spool: "12"', "spool:")},
        "series/garden-year/fern/pattern.yaml:10:23: 'spool' has no value; write one, for example spool: \"10\"",
    ),
    Case(
        "a paint at the wrong end of a brush",
        {FINISH: ("put_on_with: brush", "put_on_with: roller")},
        "finishes/shelf/finish.yaml:20:18: 'put_on_with' cannot be 'roller'; known here: brush, spray",
    ),
    Case(
        "a trim of an unknown kind",
        {FINISH: ("kind: gathered", "kind: frilled")},
        "finishes/shelf/finish.yaml:24:14: 'kind' cannot be 'frilled'; known here: gathered, round, straight",
    ),
    Case(
        "a designer without a name",
        {SERIES: ("    name: Wren Alder\n", "")},
        "series/garden-year/series.yaml:9:5: 'name' is missing in a designer; add a line, for example name: Oriel Thackwray",
    ),
    Case(
        "a pattern without revisions",
        {PATTERN: TINY[PATTERN][: TINY[PATTERN].index("revisions:")]},
        "series/garden-year/fern/pattern.yaml:1:1: 'revisions' is missing in a pattern; add a line, for example revisions: [{date: 2026-11-25, note: First issue.}]",
    ),
    Case(
        "a pattern that is given away and sold",
        {PATTERN: ("sold_at:", "given_away: [chart]\nsold_at:")},
        "series/garden-year/fern/pattern.yaml:24:13: this pattern is given away, and has a shop as well (line 25); take out 'given_away' if it is sold, or 'sold_at' if it costs nothing",
    ),
    Case(
        "a part of a pattern that cannot be given away",
        {PATTERN: ("sold_at:", "given_away: [charts]\nsold_at:")},
        "series/garden-year/fern/pattern.yaml:24:14: an entry of 'given_away' cannot be 'charts'; did you mean 'chart'?",
    ),
    *(
        Case(
            f"a colour in three numbers, {how}",
            {MOSS: ('"#a04030"', written)},
            f"threads/moss.yaml:9:{column}: 'hex' is '{said}', which is not a colour of six digits or letters a to f; write it in six: \"#a04030\"",
        )
        for how, written, said, column in (
            ("between brackets", "rgb(160,64,48)", "rgb(160, 64, 48)", 36),
            ("between quotes", '"160, 64, 48"', "160, 64, 48", 37),
        )
    ),
    Case(
        "a comma in place of a colon before a number",
        {PATTERN: ('spool: "10"}', 'spool, "10"}')},
        """series/garden-year/fern/pattern.yaml:9:17: a comma stands after 'spool' in place of a colon; write spool: "10\"""",
    ),
    *(
        Case(
            f"points as a list of {what}",
            {PATTERN: (old, new)},
            line,
        )
        for what, old, new, line in (
            (
                "two numbers",
                'at: "2.5,2.5 3,3"',
                "at: [2.5, 3]",
                """series/garden-year/fern/pattern.yaml:15:21: 'at' has a list, and needs one value; write for example at: "2.5,3\"""",
            ),
            (
                "words",
                'at: "2.5,2.5 3,3"',
                "at: [left, right]",
                """series/garden-year/fern/pattern.yaml:15:21: 'at' has a list, and needs one value; write for example at: "12.5,30.5 14,31\"""",
            ),
        )
    ),
    Case(
        "a word for no list that may be left out",
        {FINISH: ("cautions: [small magnets, dust]", "cautions: none")},
        "finishes/shelf/finish.yaml:26:11: 'cautions' is 'none'; take this line away where there is none",
    ),
    Case(
        "a word for no counter",
        {
            PATTERN: (
                "sold_at:\n  - {name: Alder's counter, url: https://alder.example/by-fern}\n",
                "sold_at: none\n",
            )
        },
        "series/garden-year/fern/pattern.yaml:24:10: 'sold_at' is 'none'; take this line away where there is none",
    ),
    Case(
        "aida over two",
        {
            CLOTH: ("weave: evenweave\ncount: 28", "weave: aida\ncount: 14"),
            SERIES: ("strands: 2", "strands: 5"),
        },
        "cloths/hopsack-28.yaml:3:8: advice: the count is 14, and the cloth is called 'Hopsack 28'; if the name is right, write count: 28; else mend the name",
        "cloths/hopsack-28.yaml:4:7: advice: with over: 2 each stitch covers 2 blocks of this aida, and so is much larger than usual; aida is worked with over: 1; where one pattern wants it otherwise, write over in that pattern's cloth choice",
    ),
    Case(
        "a name changed where it is written, and not where it is used",
        {
            FINISH: TINY[FINISH]
            .replace("  - name: sage", "  - name: sages")
            .replace(
                "paints:\n",
                "  - name: cap\n    outline: 0,0 120,0 120,10 0,10\n    at: 0,0\n    thickness: 6 mm\n    paint: sage\n    coats: 2\npaints:\n",
            )
        },
        "finishes/shelf/finish.yaml:14:12: there is no paint 'sage', named here and on line 21; did you mean 'sages'?",
    ),
    Case(
        "a comma in place of a colon before a name",
        {MOSS: ("name: brick", "name, brick")},
        "threads/moss.yaml:9:18: a comma stands after 'name' in place of a colon; write name: brick",
    ),
    Case(
        "a place without its comma",
        {FINISH: ("at: 0,0", "at: 0 0")},
        "finishes/shelf/finish.yaml:11:9: '0 0' is not a point; write 0,0",
    ),
    Case(
        "a place with a full stop between its numbers",
        {FINISH: ("at: 0,0", "at: 10.34")},
        "finishes/shelf/finish.yaml:11:9: '10.34' is not a point; write 10,34",
    ),
    Case(
        "an outline with a full stop between two numbers",
        {FINISH: ("outline: 0,0 120,0 120,120 0,120", "outline: 0,0 120,0 120.120 0,120")},
        "finishes/shelf/finish.yaml:10:24: '120.120' is not a point; write a comma between its numbers: 120,120",
    ),
    Case(
        "a decimal comma between braces",
        {FINISH: ("overlap: 20 mm", "overlap: 1,5 cm")},
        "finishes/shelf/finish.yaml:24:45: '1,5 cm' has a comma in its number; write a full stop: '1.5 cm'",
    ),
    Case(
        "a place with a comma before its decimal",
        {FINISH: ("at: 0,0", "at: 0,5,100")},
        "finishes/shelf/finish.yaml:11:9: '0,5,100' is not a point; write a full stop before decimals, and one comma, as in 0.5,100",
    ),
    Case(
        "one finish, nearly spelt, where a list is due",
        {PATTERN: ("key:\n", "also_finished_as: frame\nkey:\n")},
        "series/garden-year/fern/pattern.yaml:8:19: 'also_finished_as' should be a list, and is 'frame'; put brackets round it, or a dash before each entry, for example also_finished_as: [framed]",
    ),
    Case(
        "a key line of which nothing is written yet",
        {PATTERN: (KEY_LINE, "  r:\n")},
        """series/garden-year/fern/pattern.yaml:9:5: 'r' has no value; write one, for example r: {moss: "K4"}""",
    ),
    Case(
        "magnets as their label says them",
        {FINISH: ("diameter: 10 mm, thickness: 2 mm", "diameter: 10 x 2 mm")},
        "finishes/shelf/finish.yaml:25:31: 'diameter' has two measures, and the second has a name of its own; write diameter: 10 mm, thickness: 2 mm",
    ),
    Case(
        "a pattern with a name for its title",
        {PATTERN: ("title: Fern", "name: Fern")},
        "series/garden-year/fern/pattern.yaml:1:1: 'name' is not part of a pattern; did you mean 'title', which is missing?",
    ),
    Case(
        "two designers for one pattern",
        {PATTERN: ("designer: alder", "designer: [alder, wren]")},
        "series/garden-year/fern/pattern.yaml:2:11: 'designer' has a list, and needs one value; write for example designer: alder",
    ),
)
