"""The questions as C and JavaScript ask them: the same words, answers read back."""
import ctypes
import json
import os
import shutil
import subprocess

LIBRARY = os.environ.get("TAUTEN_C_LIBRARY")
PACKAGE = os.environ.get("TAUTEN_WASM_PACKAGE")
NODE = shutil.which("node") or shutil.which("nodejs")


class Refused(Exception):
    """What a language refuses: the argument at fault, and the sentence."""

    def __init__(self, argument, message):
        super().__init__(message)
        self.argument = argument

    def __eq__(self, other):
        return isinstance(other, Refused) and (self.argument, str(self)) == (other.argument, str(other))


def pairs_of(job):
    """Key and text of each thing that is said; a list is said again for each item."""
    return [(key, text) for key, texts in job.items() for text in ([texts] if isinstance(texts, str) else texts)]


class _Pair(ctypes.Structure):
    _fields_ = [("key", ctypes.c_char_p), ("text", ctypes.c_char_p)]


class _Error(ctypes.Structure):
    _fields_ = [("argument", ctypes.c_char * 64), ("message", ctypes.c_char * 512)]


class C:
    """The shared library."""

    def __init__(self):
        self.library = ctypes.CDLL(LIBRARY)
        self.library.tauten_answer_json.restype = ctypes.c_size_t
        self.library.tauten_answer_free.restype = None

    def __call__(self, act, question, job, *format):
        """act: ask, page or explain_answer."""
        pairs = [(key.encode(), text.encode()) for key, text in pairs_of(job)]
        answer, error = ctypes.c_void_p(), _Error()
        status = getattr(self.library, f"tauten_{act}")(
            question.encode(), (_Pair * len(pairs))(*pairs), ctypes.c_size_t(len(pairs)),
            *(each.encode() for each in format), ctypes.byref(answer), ctypes.byref(error))
        if status:
            return Refused(error.argument.decode(), error.message.decode(errors="replace"))
        try:
            size = self.library.tauten_answer_json(answer, b"", None, ctypes.c_size_t(0)) + 1
            text = ctypes.create_string_buffer(size)
            self.library.tauten_answer_json(answer, b"", text, ctypes.c_size_t(size))
            return json.loads(text.value)
        finally:
            self.library.tauten_answer_free(answer)


ASK_ALL = """
import { readFileSync } from "node:fs";
const { load } = await import(process.argv[1]);
const tauten = await load();
const ask = ([act, ...rest]) => {
  try {
    return { answer: tauten[act](...rest) };
  } catch (error) {
    return { argument: error.argument, message: error.message };
  }
};
console.log(JSON.stringify(JSON.parse(readFileSync(0, "utf8")).map(ask)));
"""


def in_javascript(calls):
    """Answers to calls like ("page", "clamp", {"thread": "M16", ...}, "html"), all by one process."""
    done = subprocess.run([NODE, "--input-type=module", "-e", ASK_ALL, f"file://{PACKAGE}/index.js"],
                          input=json.dumps(calls), capture_output=True, text=True, check=True)
    return [each["answer"] if "answer" in each else Refused(each["argument"], each["message"])
            for each in json.loads(done.stdout)]
