"""Untested, see ../README.md. Builds from the working copy that this file stands in."""
import os
import re

from conan import ConanFile
from conan.tools.build import check_min_cppstd
from conan.tools.cmake import CMake, CMakeDeps, CMakeToolchain, cmake_layout
from conan.tools.files import copy, load

ROOT = os.path.join("..", "..")


class Tauten(ConanFile):
    name = "tauten"
    description = "Torque and tension of threaded fasteners"
    license = "BSL-1.0"
    settings = "os", "arch", "compiler", "build_type"
    options = {"c_interface": [True, False]}
    default_options = {"c_interface": False}

    def set_version(self):
        text = load(self, os.path.join(self.recipe_folder, ROOT, "include/tauten/base/version.hpp"))
        self.version = ".".join(re.findall(r"^#define TAUTEN_VERSION_\w+ (\d+)$", text, re.M))

    def export_sources(self):
        source = os.path.join(self.recipe_folder, ROOT)
        for pattern in ("CMakeLists.txt", "LICENSE", "cmake/*", "include/*", "src/*"):
            copy(self, pattern, source, self.export_sources_folder)

    def requirements(self):
        self.requires("boost/[>=1.74]", transitive_headers=True)

    def layout(self):
        cmake_layout(self)

    def validate(self):
        check_min_cppstd(self, 20)

    def generate(self):
        CMakeDeps(self).generate()
        toolchain = CMakeToolchain(self)
        for name in ("COMMAND", "PYTHON", "TESTS", "BENCHMARKS"):
            toolchain.cache_variables[f"TAUTEN_{name}"] = False
        toolchain.cache_variables["TAUTEN_C"] = bool(self.options.c_interface)
        toolchain.generate()

    def build(self):
        cmake = CMake(self)
        cmake.configure()
        cmake.build()

    def package(self):
        CMake(self).install()
        copy(self, "LICENSE", self.source_folder, os.path.join(self.package_folder, "licenses"))

    def package_id(self):
        if not self.info.options.c_interface:
            self.info.clear()  # headers only

    def package_info(self):
        self.cpp_info.set_property("cmake_file_name", "tauten")
        self.cpp_info.components["headers"].set_property("cmake_target_name", "tauten::tauten")
        self.cpp_info.components["headers"].requires = ["boost::headers"]
        self.cpp_info.components["headers"].libdirs = []
        if self.options.c_interface:
            c = self.cpp_info.components["c"]
            c.set_property("cmake_target_name", "tauten::c")
            c.set_property("pkg_config_name", "tauten")
            c.libs = ["tauten"]
