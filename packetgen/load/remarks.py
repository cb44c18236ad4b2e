"""A '#' in a text: to YAML it begins a remark, and the rest of the line is lost without a word."""

import re

from packetgen.diagnostics import Place, Problems
from packetgen.load.cut_off import between_quotes
from packetgen.load.schema import Text
from packetgen.load.words import said
from packetgen.load.yaml_nodes import TextNode

_REMARK = re.compile(r"(?P<gap> +)(?P<remark>#.*?) *")
_SHORT = 20  # characters: of a number on a label, behind which a remark is likelier than more of it


def complain_of_cut(kind: Text, node: TextNode, problems: Problems) -> None:
    """Advice on a remark behind a text that may well be the end of it: its '#' stands close to the word behind
    it, as before a number, or has one space before it, as between words. Remarks that are set off by two
    spaces or more and begin with a space are meant as such."""
    found = _REMARK.fullmatch(node.behind)
    if not found:
        return
    gap, remark = found["gap"], found["remark"]
    close = remark[1:2] not in ("", " ", "#")
    in_words = len(gap) == 1 and remark[1:].strip(" #") and kind.at_most > _SHORT
    if close or in_words:
        place = Place(node.ends.path, node.ends.line, node.ends.column + len(gap))
        text = f"{node.value}{gap}{remark}"
        whole = between_quotes(text)
        quoted = f"write {whole}" if whole else "put all of it between quotes, this too"
        problems.add(place, "text-cut", rest=said(remark), quoted=quoted)


def lost_to_remark(node: TextNode) -> str:
    """What stands in the place of a value that is missing, close behind a '#': '#2 Fern'; '' where there is a
    proper remark, or nothing."""
    found = _REMARK.fullmatch(node.behind)
    return found["remark"] if found and found["remark"][1:2] not in ("", " ", "#") else ""
