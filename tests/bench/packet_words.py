"""What a packet says, in plain lists: headings, paragraphs and tables, for setting them by other means."""

from lxml import html

SYMBOLS = "Potting Symbols"
Cell = tuple[str, str, str]  # words, colour of the box before them or '', symbol in the box or ''
# ('heading 1' to 'heading 4', words), ('words', words), ('table', lines of cells), ('picture', file name)
Block = tuple[str, str | list[list[Cell]]]


def blocks(document: str) -> list[Block]:
    """Everything that a packet's HTML says, in order; of its drawings only the cover's picture."""
    found: list[Block] = []
    (body,) = html.fromstring(document).iter("body")
    for element in body.iter("h1", "h2", "h3", "h4", "p", "li", "table", "img"):
        if element.tag == "table":
            lines = [[_cell(cell) for cell in line.iter("td", "th")] for line in element.iter("tr")]
            found.append(("table", lines))
        elif element.get("class") == "cover-picture":
            found.append(("picture", element.get("src").removeprefix("asset:")))
        elif element.tag != "img" and (words := _words(element)):
            level = element.tag.removeprefix("h")
            found.append((f"heading {level}" if level.isdigit() else "words", words))
    return found


def _cell(element: html.HtmlElement) -> Cell:
    boxes = element.find_class("symbol") + element.find_class("swatch")
    style = boxes[0].get("style", "") if boxes else ""
    symbols = element.find_class("symbol")
    return (
        _words(element),
        style.partition("background:")[2][:7],
        symbols[0].text_content().strip() if symbols else "",
    )


def _words(element: html.HtmlElement) -> str:
    """Its text without symbols, which have a place of their own; a line end where it has one."""
    parts = []
    for node in element.iter():
        symbol = "symbol" in node.get("class", "").split()
        parts.append("\n" if node.tag == "br" else "" if symbol else node.text or "")
        parts.append(node.tail or "" if node is not element else "")
    return "\n".join(" ".join(line.split()) for line in "".join(parts).split("\n")).strip()
