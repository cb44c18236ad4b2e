"""What the loaders have made certain stays as it is; a fault of theirs is not passed on in silence."""

import pytest

from packetgen.load.sure import all_sure, sure


def test_what_is_there_is_given_as_it_is():
    assert sure("moss") == "moss"
    assert sure(0) == 0
    assert all_sure(["moss", ""]) == ("moss", "")


def test_what_is_missing_stops_the_program():
    with pytest.raises(AssertionError, match="a value is missing"):
        sure(None)
    with pytest.raises(AssertionError, match="a value is missing"):
        all_sure(["moss", None])
