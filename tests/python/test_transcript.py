"""A long list of commands answers as it did; see tests/transcript/check.py, which also writes the record anew."""
import importlib.util
import os
import pathlib

import pytest

PROGRAM = os.environ.get("TAUTEN_PROGRAM")
CHECK = pathlib.Path(__file__).resolve().parents[1] / "transcript" / "check.py"


@pytest.mark.skipif(PROGRAM is None, reason="needs the command line program")
def test_the_commands_answer_as_they_did():
    spec = importlib.util.spec_from_file_location("transcript_check", CHECK)
    check = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(check)
    different = check.differences(PROGRAM)
    assert not different, "if this is meant, run tests/transcript/check.py --update\n" + "\n".join(different[:200])
