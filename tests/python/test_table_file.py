"""Tables in CSV on the command line: what comes out, what is refused, and that length does not matter."""
import csv
import fcntl
import io
import json
import os
import pty
import random
import re
import resource
import signal
import stat
import struct
import subprocess
import sys
import termios
import threading
import time

import pytest

PROGRAM = os.environ.get("TAUTEN_PROGRAM")
pytestmark = pytest.mark.skipif(PROGRAM is None, reason="needs the command line program")


def run(*words, table=None):
    return subprocess.run([PROGRAM, *map(str, words)], input=None if table is None else table.encode(), capture_output=True)


def rows_of(done, code=0):
    assert done.returncode == code, done.stderr
    return list(csv.DictReader(io.StringIO(done.stdout.decode(), newline="")))


def answered(*words, table, code=0):
    return rows_of(run(*words, "--file", "-", table=table), code)


def said_beside(done):
    """Standard error without the cautions that hold for every row, which a table that is answered says once."""
    said = done.stderr.decode()
    always = [line for line in said.splitlines(True) if line.startswith("tauten: Always: ")]
    assert len(always) == 1 and "Wear eye protection." in always[0] and "approve a joint for service" in always[0]
    return said.replace(always[0], "")


def refused(*words, table=None):
    """One sentence on standard error, nothing on standard output, exit code 2."""
    done = run(*words, table=table)
    assert (done.returncode, done.stdout) == (2, b""), done
    sentence = done.stderr.decode()
    assert sentence.startswith("tauten: ") and sentence.count("\n") == 1
    return sentence


def alone(*words):
    done = run("clamp", "--json", *words)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)["candidates"][0]


def test_every_row_is_the_answer_to_its_question():
    rows = answered("clamp", "--condition", "oiled", table="thread,class,torque,condition\n"
                    "M16,8.8,130N.m,\nM12,10.9,55lbf.ft,dry\n")
    for row, words in zip(rows, ["--thread M16 --class 8.8 --torque 130N.m --condition oiled",
                                 "--thread M12 --class 10.9 --torque 55lbf.ft --condition dry"]):
        bolt = alone(*words.split())
        for end in ("low", "nominal", "high"):
            assert float(row[f"clamp_load_{end}"]) == bolt["clamp_load"][end]
        assert float(row["chance_of_yield"]) == bolt["chance_of_yield"]
        assert float(row["suggested_torque"]) == bolt["suggested_torque"]
        assert row["verdict"] == bolt["verdict"]
        assert row["error"] == ""
    assert [row["row"] for row in rows] == ["1", "2"]


def test_what_the_file_says_stays_and_what_it_leaves_empty_is_filled_in():
    rows = answered("clamp", table='place,thread,socket,class,torque\n"pump, ""left""",,24mm,8.8,130 N.m\nfoot,M16,,,130N.m\n')
    assert [row["place"] for row in rows] == ['pump, "left"', "foot"]
    assert [row["thread"] for row in rows] == ["M16", "M16"]
    assert rows[0]["torque"] == "130 N.m"
    assert rows[1]["class"] == "4.6" and "unmarked_head" in rows[1]["warnings"].split(";")


def test_columns_may_be_called_otherwise():
    table = "place,Size,grade,torque\na,M16,8.8,130N.m\n"
    done = run("clamp", "--file", "-", "--rename", "Size=thread,grade=class", table=table)
    row, = rows_of(done)
    assert (row["Size"], row["grade"]) == ("M16", "8.8") and "thread" not in row and "property_class" not in row
    assert float(row["clamp_load_low"]) == alone("--thread", "M16", "--class", "8.8", "--torque", "130N.m")["clamp_load"]["low"]
    assert said_beside(done) == "tauten: not read, only copied: 'place'\n"
    for words, sentence in [(["Size=thred"], "did you mean thread?"), (["Sizes=thread"], "did you mean Size?"),
                            (["Size"], "write it like"), (["Size=thread", "grade=thread"], "is there twice"),
                            (["=thread"], "write it like")]:
        assert sentence in refused("clamp", "--file", "-", *(word for one in words for word in ("--rename", one)), table=table)


def test_a_misread_table_shows_in_the_columns_that_only_go_along():
    wide = "thread,torque," + ",".join(f"c{i}" for i in range(11)) + "\nM16,130N.m" + ",1" * 11 + "\n"
    said = said_beside(run("clamp", "--file", "-", table=wide))
    assert said == "tauten: not read, only copied: " + ", ".join(f"'c{i}'" for i in range(8)) + " and 3 more columns\n"
    assert said_beside(run("clamp", "--file", "-", table="thread,torque\nM16,130N.m\n")) == ""


def test_numbers_that_cannot_be_are_shown_with_their_range():
    table = "thread,torque\nM16,130N.m\n"
    for option, most in (("--from-row", "1000000000000000"), ("--jobs", "256")):
        for value in ("0", "-1", "x", "1.5", "99999999999999999999"):
            sentence = refused("clamp", "--file", "-", f"{option}={value}", table=table)
            assert sentence == f"tauten: {option} is '{value}', but must be a whole number from 1 to {most}\n"
        assert "has no value; write it like" in refused("clamp", "--file", "-", option, table=table)


def test_what_is_no_job_file_is_a_table(tmp_path):
    for name in ("t.txt", "t.tsv", "t"):
        (tmp_path / name).write_text("thread\ttorque\nM16\t130N.m\n")
        assert "commas between the columns" in refused("clamp", "--file", tmp_path / name)


def test_a_table_of_answers_can_be_asked_again():
    table = "place,thread,class,torque\na,M16,8.8,130N.m\nb,M99,8.8,130N.m\n"
    first = run("clamp", "--file", "-", table=table)
    again = run("clamp", "--file", "-", table=first.stdout.decode())
    assert (again.returncode, again.stdout) == (3, first.stdout)


def test_wrong_rows_have_their_error_in_a_column():
    done = run("clamp", "--file", "-", table="thread,torque\nM16,130\nM16,130N.m\nM99,5N.m\nM16\nM16,1N.m,x\n,7N.m\n"
                                             '"M16"x,8N.m\n')
    rows = rows_of(done, code=3)
    assert [bool(row["error"]) for row in rows] == [True, False, True, True, True, True, True]
    for row, words in zip(rows, ["no unit", "", "M99", "1 cells, but the header has 2", "3 cells", "give a thread",
                                 "behind its closing quote"]):
        assert words in row["error"]
        assert bool(row["verdict"]) != bool(row["error"])
    assert said_beside(done) == (f"tauten: 6 of 7 rows have no answer; the column error gives the reason, first in row 1: "
                                 f"{rows[0]['error']}\n")


def test_byte_order_mark_crlf_blank_lines_and_no_last_line_break():
    rows = answered("clamp", table="\ufeffthread,torque\r\n\r\nM16 , 130N.m\r\n\r\nM12,75N.m")
    assert [(row["row"], row["thread"], row["error"]) for row in rows] == [("2", "M16", ""), ("4", "M12", "")]


def test_line_breaks_in_cells():
    rows = answered("clamp", table='note,thread,torque\n"two\nlines",M16,130N.m\nplain,M12,75N.m\n')
    assert [row["note"] for row in rows] == ["two\nlines", "plain"]
    assert [row["row"] for row in rows] == ["1", "2"]


def test_columns_and_first_row_are_chosen():
    done = run("clamp", "--file", "-", "--columns", "verdict,least_class", "--from-row", 3, "--jobs", 1,
               table="thread,torque\n" + "M16,130N.m\n" * 5)
    assert done.stdout.decode().splitlines()[0] == "row,thread,torque,verdict,least_class,warnings,error"
    assert [row["row"] for row in rows_of(done)] == ["3", "4", "5"]


@pytest.mark.parametrize("table, words", [
    ("", "no header"), ("\n", "no header"), ("thread\ttorque\nM16\t1N.m\n", "no commas"), ("thread,torque\n", "no row 1"),
    ("thread,thread,torque\nM16,M16,1N.m\n", "two columns named 'thread'"), ("thread\nM16\n", "named torque"),
    ("torque\n1N.m\n", "thread, socket or key"), ("thread,torqe\nM16,1N.m\n", "did you mean torque?"),
    ('thread,torque\nM16,1N.m\nM16,"1N.m\n', "within a quote that row 2 opens"), ("thread,torque\nM16\0,1N.m\n", "not text"),
    ('thread,torque\nM16,"' + "x" * 2_200_000 + "\n", "more than 1 MB in row 1"),
], ids=lambda text: text[:20])
def test_bad_files_are_refused_in_one_sentence(table, words):
    assert words in refused("clamp", "--file", "-", table=table)


def test_bad_words_are_refused_before_the_file_is_read(tmp_path):
    table = "thread,torque\nM16,1N.m\n"
    assert "oild" in refused("clamp", "--file", "-", "--condition", "oild", table=table)
    assert "no column 'verdikt'" in refused("clamp", "--file", "-", "--columns", "verdikt", table=table)
    assert "--output requires --file" in refused("clamp", "--thread", "M16", "--torque", "1N.m", "--output", "x.csv")
    assert "cannot be read" in refused("clamp", "--file", tmp_path / "none.csv")
    (tmp_path / "folder.csv").mkdir()
    assert "folder" in refused("clamp", "--file", tmp_path / "folder.csv")
    file = tmp_path / "t.csv"
    file.write_text(table)
    assert "cannot be written" in refused("clamp", "--file", file, "--output", tmp_path / "none" / "out.csv")
    in_json = run("clamp", "--file", file, "--json")
    assert in_json.returncode == 2 and "does not apply to tables" in json.loads(in_json.stdout)["error"]["message"]


def test_the_output_is_whole_or_not_there(tmp_path):
    good, bad, out = tmp_path / "good.csv", tmp_path / "bad.csv", tmp_path / "out.csv"
    good.write_text("thread,torque\nM16,130N.m\n")
    bad.write_text("thread,torque\n" + "M16,130N.m\n" * 300_000 + 'M16,"1N.m\n')
    assert run("clamp", "--file", good, "--output", out).returncode == 0
    whole = out.read_bytes()
    assert whole.count(b"\n") == 2
    assert "quote" in refused("clamp", "--file", bad, "--output", out)
    assert out.read_bytes() == whole and sorted(path.name for path in tmp_path.iterdir()) == ["bad.csv", "good.csv", "out.csv"]


@pytest.mark.skipif(not os.path.exists("/dev/full"), reason="needs /dev/full")
def test_a_full_disk_is_told(tmp_path):
    file = tmp_path / "t.csv"
    file.write_text("thread,torque\nM16,130N.m\n")
    with open("/dev/full", "w") as full:
        done = subprocess.run([PROGRAM, "clamp", "--file", file], stdout=full, stderr=subprocess.PIPE)
    assert done.returncode == 1 and b"could not be written" in done.stderr


def fleet(path, rows, varied=False):
    """A table of joints; of `varied` ones no two are alike but for the torque."""
    pick = random.Random(5)
    with open(path, "w") as file:
        file.write("place,thread,class,torque,condition" + ",wrench-accuracy" * varied + "\n")
        for row in range(rows):
            file.write(f"pump {row},{pick.choice(('M10', 'M12', 'M16', 'M20'))},{pick.choice(('8.8', '10.9'))},"
                       f"{pick.uniform(20, 400):.1f}N.m,{pick.choice(('oiled', 'dry'))}"
                       + f",{5 + row / 1e5:.5f}%" * varied + "\n")


def test_threads_and_blocks_change_nothing(tmp_path):
    fleet(tmp_path / "fleet.csv", 100_000)  # several blocks of 1 MB
    one, many = (run("clamp", "--file", tmp_path / "fleet.csv", "--jobs", threads) for threads in (1, 3))
    assert one.returncode == 0 and one.stdout == many.stdout
    rows = rows_of(one)
    assert [int(row["row"]) for row in rows] == list(range(1, 100_001))
    for row in random.Random(2).sample(rows, 5):
        bolt = alone("--thread", row["thread"], "--class", row["class"], "--torque", row["torque"], "--condition",
                     row["condition"])
        low = bolt["clamp_load"]["low"]  # null where the bolt may shear
        assert row["clamp_load_low"] == ("" if low is None else row["clamp_load_low"])
        assert low is None or float(row["clamp_load_low"]) == low
        assert row["verdict"] == bolt["verdict"]
    rest = run("clamp", "--file", tmp_path / "fleet.csv", "--from-row", 60_001)
    assert rest.stdout.splitlines()[1:] == one.stdout.splitlines()[60_001:]


@pytest.mark.parametrize("rows, threads, varied", [(500_000, 2, False), (500_000, 64, False), (30_000, 64, True)])
def test_memory_is_bounded_for_any_length_and_number_of_threads(tmp_path, rows, threads, varied):
    """Stands for any length: blocks are bounded, and so is what is remembered of rows that all differ."""
    fleet(tmp_path / "long.csv", rows, varied)

    def most_memory(path):  # in kB, of a process of its own
        code = ("import resource, subprocess, sys; subprocess.run(sys.argv[1:], check=True, stdout=subprocess.DEVNULL, "
                "stderr=subprocess.DEVNULL); print(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss)")
        words = [PROGRAM, "clamp", "--file", path, "--jobs", str(threads)]
        return int(subprocess.run([sys.executable, "-c", code, *words], capture_output=True, check=True).stdout)

    assert most_memory(tmp_path / "long.csv") < 200_000


def test_progress_is_for_terminals_only(tmp_path):
    fleet(tmp_path / "fleet.csv", 2_000)
    assert said_beside(run("clamp", "--file", tmp_path / "fleet.csv")) == "tauten: not read, only copied: 'place'\n"
    ours, theirs = pty.openpty()
    feeding = subprocess.Popen([PROGRAM, "clamp", "--file", "-"], stdin=subprocess.PIPE, stdout=subprocess.DEVNULL, stderr=theirs)
    os.close(theirs)
    feeding.stdin.write(b"thread,torque\n")
    seen = b""
    for _ in range(12):  # slower than the 0.2 s between two signs of life
        feeding.stdin.write(b"M16,130N.m\n" * 10_000)
        feeding.stdin.flush()
        time.sleep(0.05)
    feeding.stdin.close()
    while True:
        try:
            read = os.read(ours, 1000)
        except OSError:  # the other side is closed
            break
        if not read:
            break
        seen += read
    assert feeding.wait() == 0
    progress, cautions, _ = seen.partition(b"tauten: Always: ")
    assert b" rows" in progress and progress.endswith(b"\r\x1b[K") and cautions


def until(true):
    """Waits long, for machines that are busy; a test fails if it never comes."""
    for _ in range(6000):
        if true():
            return
        time.sleep(0.02)
    raise AssertionError("waited two minutes in vain")


def start(*words, **options):
    return subprocess.Popen([PROGRAM, *map(str, words)], stderr=subprocess.PIPE, bufsize=0, **options)


def catches_interrupt(process):
    with open(f"/proc/{process.pid}/status") as status:
        caught = next(line for line in status if line.startswith("SigCgt:"))
    return int(caught.split()[1], 16) >> (signal.SIGINT - 1) & 1 == 1


def ended(process, code):
    """What it said on standard error. Its standard input stays open: it ends by itself."""
    process.wait(timeout=120)
    said = process.stderr.read().decode()
    assert process.returncode == code, said
    return said


def lines_of(path):
    return path.read_text().splitlines() if path.exists() else []


@pytest.fixture
def part_of_a_run(tmp_path):
    """The table of a fleet, and a run over its first rows that was interrupted; the file that it left, and its last row."""
    fleet(tmp_path / "fleet.csv", 3000)
    lines = (tmp_path / "fleet.csv").read_bytes().splitlines(keepends=True)
    feeding = start("clamp", "--file", "-", "--output", tmp_path / "out.csv", stdin=subprocess.PIPE)
    part = tmp_path / "out.csv.part"
    feeding.stdin.write(b"".join(lines[:1001]))
    feeding.stdin.flush()
    until(lambda: len(lines_of(part)) > 1)
    feeding.send_signal(signal.SIGINT)
    said = ended(feeding, 1)
    last = len(lines_of(part)) - 1
    assert 1 <= last <= 1000 and lines_of(part)[-1].startswith(f"{last},")
    assert f"stopped after row {last}, rows so far are in" in said and f"resume with --from-row {last + 1}\n" in said
    assert not (tmp_path / "out.csv").exists()
    return part, last


def test_costly_rows_come_soon_and_the_interrupt_is_heard_at_each(tmp_path):
    file, part = tmp_path / "stuck.csv", tmp_path / "out.csv.part"
    file.write_text("thread,class,rust,limit\n" + "".join(f"M16,8.8,rusted,{200 + row}N.m\n" for row in range(400)))
    for stop in signal.SIGINT, signal.SIGTERM:
        part.unlink(missing_ok=True)
        running = start("free", "--file", file, "--output", tmp_path / "out.csv", "--jobs", 2)
        until(lambda: len(lines_of(part)) > 1)
        running.send_signal(stop)
        said = ended(running, 1)
        rows = [int(line.split(",")[0]) for line in lines_of(part)[1:]]
        assert rows == list(range(1, len(rows) + 1)) and len(rows) < 400
        assert f"stopped after row {len(rows)}" in said and f"--from-row {len(rows) + 1}\n" in said


def test_the_second_interrupt_ends_at_once(tmp_path):
    fleet(tmp_path / "fleet.csv", 20_000)
    running = start("clamp", "--file", tmp_path / "fleet.csv", stdout=subprocess.PIPE)
    held = []

    def waits_for_a_reader():  # nothing has come into the pipe for a second
        held.append(struct.unpack("i", fcntl.ioctl(running.stdout, termios.FIONREAD, bytes(4)))[0])
        return held[-1] > 0 and len(set(held[-50:])) == 1 and len(held) >= 50

    until(waits_for_a_reader)
    assert catches_interrupt(running)
    running.send_signal(signal.SIGINT)
    until(lambda: not catches_interrupt(running))
    running.send_signal(signal.SIGINT)
    assert ended(running, -signal.SIGINT) == ""


def test_a_pipe_is_answered_as_it_comes_and_an_idle_one_can_be_left():
    feeding = start("clamp", "--file", "-", stdin=subprocess.PIPE, stdout=subprocess.PIPE)
    feeding.stdin.write(b"thread,torque\n" + b"M16,130N.m\n" * 3)
    feeding.stdin.flush()
    assert [feeding.stdout.readline().split(b",")[0] for _ in range(4)] == [b"row", b"1", b"2", b"3"]
    feeding.send_signal(signal.SIGINT)
    assert "stopped after row 3; resume with --from-row 4\n" in ended(feeding, 1)


def test_an_interrupt_before_the_first_row_names_that_row(tmp_path):
    feeding = start("clamp", "--file", "-", "--from-row", 1000, "--output", tmp_path / "out.csv", stdin=subprocess.PIPE)
    feeding.stdin.write(b"thread,torque\n" + b"M16,130N.m\n" * 3)
    feeding.stdin.flush()
    until(lambda: catches_interrupt(feeding))
    feeding.send_signal(signal.SIGINT)
    assert ended(feeding, 1) == "tauten: stopped before row 1000; resume with --from-row 1000\n"
    assert list(tmp_path.iterdir()) == []


def test_what_the_parent_ignores_stays_ignored(tmp_path):
    feeding = start("clamp", "--file", "-", stdin=subprocess.PIPE, stdout=subprocess.PIPE,
                    preexec_fn=lambda: signal.signal(signal.SIGINT, signal.SIG_IGN))
    feeding.stdin.write(b"thread,torque\nM16,130N.m\n")
    feeding.stdin.flush()
    feeding.stdout.readline()
    feeding.send_signal(signal.SIGINT)
    out, said = feeding.communicate(b"M16,130N.m\n", timeout=120)
    assert (feeding.returncode, out.count(b"\n")) == (0, 2)
    assert said.startswith(b"tauten: Always: ") and said.count(b"\n") == 1  # the cautions of every table


@pytest.mark.parametrize("torn", ["", '7,"pump'])
def test_going_on_gives_the_file_of_one_run(tmp_path, part_of_a_run, torn):
    part, last = part_of_a_run
    with open(part, "a") as file:
        file.write(torn)  # a power cut may leave half a row
    done = run("clamp", "--file", tmp_path / "fleet.csv", "--from-row", last + 1, "--output", tmp_path / "out.csv")
    assert done.returncode == 0, done.stderr
    assert not part.exists()
    assert (tmp_path / "out.csv").read_bytes() == run("clamp", "--file", tmp_path / "fleet.csv").stdout


def test_going_on_behind_the_last_row_gives_the_file_its_name(tmp_path, part_of_a_run):
    part, last = part_of_a_run
    lines = (tmp_path / "fleet.csv").read_text().splitlines(keepends=True)
    words = ["clamp", "--file", tmp_path / "short.csv", "--from-row", last + 1, "--output", tmp_path / "out.csv"]
    (tmp_path / "short.csv").write_text("".join(lines[:last]))
    assert f"has no row {last + 1}" in refused(*words) and part.exists()
    (tmp_path / "short.csv").write_text("".join(lines[:last + 1]))
    assert run(*words).returncode == 0
    assert len(lines_of(tmp_path / "out.csv")) == last + 1 and not part.exists()


def test_saved_rows_are_never_lost(tmp_path, part_of_a_run):
    part, last = part_of_a_run
    saved = part.read_bytes()
    words = ["clamp", "--file", tmp_path / "fleet.csv", "--output", tmp_path / "out.csv"]
    for wrong in [[], ["--from-row", last], ["--from-row", last + 2]]:
        sentence = refused(*words, *wrong)
        assert f"rows up to {last}" in sentence and f"--from-row {last + 1}" in sentence and "remove" in sentence
    assert "other columns" in refused(*words, "--from-row", last + 1, "--columns", "verdict")
    bad = tmp_path / "bad.csv"
    bad.write_bytes((tmp_path / "fleet.csv").read_bytes() + b'"open\n')
    assert "within a quote" in refused("clamp", "--file", bad, "--output", tmp_path / "out.csv", "--from-row", last + 1)
    assert part.read_bytes() == saved
    (tmp_path / "saved.csv").symlink_to(part)
    assert "over the table that is read" in refused("clamp", "--file", tmp_path / "saved.csv", *words[3:])
    part.write_text("notes of the station\n")
    assert "other columns" in refused(*words) and part.read_text() == "notes of the station\n"


def test_one_run_writes_a_file_at_a_time(tmp_path):
    table, out = tmp_path / "t.csv", tmp_path / "out.csv"
    os.mkfifo(table)  # the first run waits for rows that come late
    first = start("clamp", "--file", table, "--output", out)
    with open(table, "w") as rows:
        rows.write("thread,torque\n" + "M16,130N.m\n" * 100_000)
        rows.flush()
        part = tmp_path / "out.csv.part"
        while not part.exists() and first.poll() is None:
            time.sleep(0.01)
        (tmp_path / "other.csv").write_text("thread,torque\nM12,80N.m\n")
        assert "is being written by another run" in refused("clamp", "--file", tmp_path / "other.csv", "--output", out)
        rows.write("M16,150N.m\n")
    ended(first, 0)
    assert out.read_bytes().count(b"\n") == 100_002 and b"M12" not in out.read_bytes()


def test_answers_are_not_written_over_their_table(tmp_path):
    table = tmp_path / "t.csv"
    table.write_text("thread,torque\nM16,130N.m\n")
    (tmp_path / "link.csv").symlink_to(table)
    for name in ("t.csv", "link.csv"):
        assert "over the table that is read" in refused("clamp", "--file", table, "--output", tmp_path / name)
    assert table.read_text() == "thread,torque\nM16,130N.m\n"


def test_rows_before_a_full_disk_stay(tmp_path):
    table, out, whole = tmp_path / "t.csv", tmp_path / "out.csv", tmp_path / "whole.csv"
    table.write_text("thread,torque\n" + "M16,130N.m\n" * 3000)
    full = start("clamp", "--file", table, "--output", out,
                 preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (100_000, 100_000)))
    message = full.communicate(timeout=60)[1].decode()
    row = int(re.search(r"rows up to (\d+) are in .*out.csv.part', resume with --from-row", message)[1])
    assert full.returncode == 1 and row > 100 and not out.exists()
    assert run("clamp", "--file", table, "--output", out, "--from-row", row + 1).returncode == 0
    assert run("clamp", "--file", table, "--output", whole).returncode == 0
    assert out.read_bytes() == whole.read_bytes()


def test_a_run_that_is_killed_leaves_whole_rows_to_go_on_from(tmp_path):
    """At any moment, as by a power cut: what lies there is what one run would have written, up to half a row."""
    table, out, part = tmp_path / "t.csv", tmp_path / "out.csv", tmp_path / "out.csv.part"
    fleet(table, 60_000)
    whole = run("clamp", "--file", table).stdout
    pick, cut = random.Random(16), 0
    for times in range(40):  # as often as it takes to be in time once
        if times >= 4 and cut:
            break
        out.unlink(missing_ok=True), part.unlink(missing_ok=True)
        running = start("clamp", "--file", table, "--output", out)
        size = pick.randrange(len(whole))
        until(lambda: out.exists() or part.exists() and part.stat().st_size > size or running.poll() is not None)
        running.kill()
        running.communicate()
        if out.exists():
            assert out.read_bytes() == whole
            continue
        saved = part.read_bytes()
        assert whole.startswith(saved)
        row = saved.count(b"\n")
        cut += 1
        done = run("clamp", "--file", table, "--output", out, *(["--from-row", row] if row > 1 else []))
        if row <= 1:
            part.unlink(missing_ok=True)
            continue
        assert done.returncode == 0 and out.read_bytes() == whole, done.stderr
    assert cut > 0


@pytest.mark.skipif(not os.path.exists("/dev/full"), reason="needs /dev/full")
def test_every_writer_tells_of_a_full_disk_and_of_a_place_that_takes_no_file(tmp_path):
    table = tmp_path / "t.csv"
    table.write_text("thread,torque\nM16,130N.m\n")
    bolt = ["--thread", "M16", "--class", "8.8"]
    printed = [["clamp", *bolt, "--torque", "130N.m"], ["torque", *bolt], ["identify", "--socket", "24mm"], ["thread", *bolt[:2]],
               ["reach", "--torque", "130N.m"], ["free", *bolt, "--trials", "1000"], ["pattern", "--pattern", "circle:8:160mm"],
               ["turn", *bolt, "--grip", "55mm", "--snug-torque", "50N.m"], ["cautions"], ["conditions"], ["formulas"],
               ["eval", "stress_area", "diameter=16mm", "pitch=2mm"], ["explain", "stress_area", "diameter=16mm", "pitch=2mm"], ["clamp", "--file", table],
               ["completion", "bash"]]
    for words in printed:
        for json in ([], ["--json"]):
            if json and words[0] in ("completion", "clamp") and words[-1] in ("bash", table):
                continue
            with open("/dev/full", "w") as full:
                done = subprocess.run([PROGRAM, *words, *json], stdout=full, stderr=subprocess.PIPE, text=True)
            assert done.returncode == 1 and "could not be written" in done.stderr, (words, json, done)
    named = [["clamp", "--file", table, "--output"], ["reach", "--torque", "130N.m", "--svg"]]
    for words in named:
        for place in ("/dev/full", "/proc/out.csv", tmp_path / "none" / "out.csv", tmp_path):
            done = run(*words, place)
            assert done.returncode in (1, 2) and done.stderr.count(b"\n") in (1, 2) and len(done.stderr) > 40, (words, place, done)
    assert sorted(path.name for path in tmp_path.iterdir()) == ["t.csv"]


def test_the_output_stays_what_it_is(tmp_path):
    file = tmp_path / "t.csv"
    file.write_text("thread,torque\nM16,130N.m\n")
    answer = run("clamp", "--file", file).stdout
    (tmp_path / "old.csv").write_text("old")
    for name, there in ("link", "old.csv"), ("dangling", "new.csv"):
        (tmp_path / name).symlink_to(there)
        assert run("clamp", "--file", file, "--output", tmp_path / name).returncode == 0
        assert (tmp_path / name).is_symlink() and (tmp_path / there).read_bytes() == answer
    os.mkfifo(tmp_path / "pipe")
    got = []
    reader = threading.Thread(target=lambda: got.append((tmp_path / "pipe").read_bytes()), daemon=True)
    reader.start()
    done = start("clamp", "--file", file, "--output", tmp_path / "pipe")
    ended(done, 0)
    assert stat.S_ISFIFO((tmp_path / "pipe").stat().st_mode)
    reader.join(120)
    assert got == [answer]
    (tmp_path / "folder").mkdir()
    assert "is a folder" in refused("clamp", "--file", file, "--output", tmp_path / "folder")
    assert not [path for path in tmp_path.iterdir() if path.suffix == ".part"]


def test_the_other_verbs():
    stuck = answered("free", "--columns", "stop_at,chances_free", table="thread,class,rust,limit,aid\n"
                     "M16,8.8,rusted,300N.m,brush;fluid:24h\n")[0]
    one = json.loads(run("free", "--json", *"--thread M16 --class 8.8 --rust rusted --limit 300N.m --aid brush --aid "
                         "fluid:24h".split()).stdout)
    assert (float(stuck["stop_at"]), float(stuck["chances_free"])) == (one["stop_at"], one["chances"]["free"])
    way = answered("reach", "--wrench-length", "400mm", table="torque,extension\n130N.m,100mm@30deg;50mm\n")[0]
    one = json.loads(run("reach", "--json", *"--torque 130N.m --wrench-length 400mm --extension 100mm@30deg --extension "
                         "50mm".split()).stdout)
    assert float(way["setting"]) == one["setting"]
    wish = answered("torque", "--class", "8.8", table="thread,clamp-load\nM16,50kN\n")[0]
    one = json.loads(run("torque", "--json", *"--class 8.8 --thread M16 --clamp-load 50kN".split()).stdout)
    assert float(wish["torque"]) == one["candidates"][0]["torque"]
    turned = answered("turn", "--class", "8.8", "--grip", "55mm", table="thread,angle,snug-torque\nM16,60deg,60N.m\n")[0]
    one = json.loads(run("turn", "--json", *"--class 8.8 --grip 55mm --thread M16 --angle 60deg --snug-torque "
                         "60N.m".split()).stdout)
    assert float(turned["clamp_load_high"]) == one["clamp_load"]["high"]
