#!/usr/bin/env python3
"""Makes the Debian package, unpacks it into an empty root and builds strangers' projects against nothing but that.

Takes the build folder, which must be built. Where mmdebstrap is installed and a mirror can be reached, the package is also
installed by apt into a Debian that has nothing but apt. Ends with `N passed, M failed`.
"""
import argparse
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

CONSUMERS = pathlib.Path(__file__).resolve().parents[1] / "consumers"


def run(*command, **options):
    done = subprocess.run([str(word) for word in command], capture_output=True, text=True, **options)
    if done.returncode != 0:
        raise RuntimeError(f"{' '.join(map(str, command))}\n{done.stdout}{done.stderr}")
    return done.stdout


def bare_system(folder):
    """Makes a Debian with nothing but apt; False where that cannot be."""
    release = dict(re.findall(r'^(\w+)="?(.*?)"?$', pathlib.Path("/etc/os-release").read_text(), re.M))
    if not shutil.which("mmdebstrap") or os.geteuid() != 0 or release.get("ID") != "debian":
        print("left out: a bare system needs Debian, mmdebstrap and root")
        return False
    made = subprocess.run(["mmdebstrap", "--variant=apt", "--mode=root", "--skip=cleanup/apt", release["VERSION_CODENAME"],
                           str(folder)], capture_output=True, text=True)
    if made.returncode != 0:
        print("left out: no bare system could be made:", made.stderr.strip().splitlines()[-1])
        return False
    shutil.copy("/etc/resolv.conf", folder / "etc/resolv.conf")  # so that apt finds its mirror from inside
    return True


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("build", type=pathlib.Path)
    build = parser.parse_args().build.resolve()
    results = []

    def check(title, test):
        try:
            test()
            results.append(True)
            print("ok   ", title)
        except Exception as problem:  # whatever it is, it belongs to this check
            results.append(False)
            print("FAIL ", title, problem, sep="\n")

    with tempfile.TemporaryDirectory() as name:
        work = pathlib.Path(name)
        root = work / "root"
        run("cpack", "--config", build / "CPackConfig.cmake", "-B", work / "package")
        [package] = (work / "package").glob("*.deb")
        print(package.name, package.stat().st_size, "bytes")
        print(run("dpkg-deb", "--info", package))
        run("dpkg-deb", "-x", package, root)
        usr = root / "usr"
        [pc] = usr.rglob("tauten.pc")
        library = pc.parent.parent
        environment = {**os.environ, "LD_LIBRARY_PATH": str(library), "PKG_CONFIG_PATH": str(pc.parent)}

        def program():
            answer = run(usr / "bin/tauten", "clamp", "--thread", "M16", "--class", "8.8", "--torque", "130N.m",
                         "--condition", "oiled")
            assert "May be slack" in answer, answer

        def c_program(kind):
            options = run("pkg-config", "--cflags", "--libs", *kind, "tauten", env=environment).split()
            assert str(root) in options[0], options
            if kind:
                options = [str(library / "libtauten.a") if option == "-ltauten" else option for option in options]
            run("cc", "-std=c99", CONSUMERS / "c_program/gauge.c", *options, "-o", work / "gauge")
            needs = run("readelf", "-d", work / "gauge")
            assert bool(re.search(r"libtauten\.so\.1\b", needs)) != bool(kind), needs
            assert "clamp load" in run(work / "gauge", env=environment if not kind else None)

        def find_package():
            folder = work / "installed"
            run("cmake", "-S", CONSUMERS / "installed", "-B", folder, f"-DCMAKE_PREFIX_PATH={usr}")
            assert str(root) in (folder / "CMakeCache.txt").read_text(), "another installation was found"
            run("cmake", "--build", folder)
            run(folder / "gauge")

        def installed_by_apt():
            shutil.copy(package, bare / "tmp")
            run("chroot", bare, "apt-get", "install", "-y", "--no-install-recommends", f"/tmp/{package.name}",
                env={**os.environ, "DEBIAN_FRONTEND": "noninteractive"})
            answer = run("chroot", bare, "tauten", "clamp", "--thread", "M16", "--class", "8.8", "--torque", "130N.m",
                         "--condition", "oiled")
            assert "May be slack" in answer, answer
            run("chroot", bare, "apt-get", "remove", "-y", "tauten")
            assert not (bare / "usr/bin/tauten").exists()

        check("the command line program runs", program)
        check("a C program by pkg-config, shared library", lambda: c_program(()))
        check("a C program by pkg-config, static library", lambda: c_program(("--static",)))
        check("a C++ program by find_package", find_package)
        bare = work / "bare"
        if bare_system(bare):
            check("apt installs it into a bare system, where it runs, and removes it", installed_by_apt)
    print(f"{sum(results)} passed, {len(results) - sum(results)} failed")
    return 0 if all(results) else 1


if __name__ == "__main__":
    sys.exit(main())
