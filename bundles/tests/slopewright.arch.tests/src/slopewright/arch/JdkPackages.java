package slopewright.arch;

import java.lang.module.ModuleFinder;

/** The packages that come with Java itself. */
final class JdkPackages {

    private JdkPackages() {
    }

    static boolean contains(String name) {
        return ModuleFinder.ofSystem().findAll().stream().anyMatch(module -> module.descriptor().packages().contains(name));
    }
}
