"""Lets setuptools hand the compiled module of the package to CMake, with the options in the environment variable CMAKE_ARGS.
Everything else stands in pyproject.toml."""
import os
import pathlib
import shlex
import subprocess
import sys

from setuptools import Extension, setup
from setuptools.command.build_ext import build_ext

ROOT = pathlib.Path(__file__).resolve().parent


class CMakeBuild(build_ext):
    def build_extension(self, extension):
        package = pathlib.Path(self.get_ext_fullpath(extension.name)).resolve().parent
        work = pathlib.Path(self.build_temp).resolve()
        options = [f"-DTAUTEN_{part}=OFF" for part in ("COMMAND", "C", "TESTS", "BENCHMARKS")]
        options += shlex.split(os.environ.get("CMAKE_ARGS", ""))
        try:
            import pybind11
            options.append(f"-Dpybind11_DIR={pybind11.get_cmake_dir()}")
        except ImportError:
            pass  # then the one of the system is found
        subprocess.run(["cmake", "-S", ROOT, "-B", work, "-DTAUTEN_PYTHON=ON",
                        f"-DTAUTEN_PYTHON_EXECUTABLE={sys.executable}", *options], check=True)
        subprocess.run(["cmake", "--build", work, "--target", "_core", "--parallel"], check=True)
        subprocess.run(["cmake", "--install", work, "--component", "python", "--prefix", package.parent], check=True)


setup(ext_modules=[Extension("tauten._core", sources=[])], cmdclass={"build_ext": CMakeBuild})
