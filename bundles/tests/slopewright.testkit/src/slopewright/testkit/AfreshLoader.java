package slopewright.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Loads some bundles of the product anew, with one more service registered, so that a test can add one as a user would: by registering its
 * class and nothing else. Everything that is not loaded anew is shared with the product around it.
 */
public final class AfreshLoader extends ClassLoader {
    private final String service;
    private final URL registration;
    private final Map<String, ClassLoader> anew = new LinkedHashMap<>();

    /**
     * Makes a loader.
     *
     * @param service      the type of the service
     * @param registration a file with the name of the class that is registered
     * @param bundles      one class of each bundle to be loaded anew, that of the test first; all of its packages below the first two
     * parts of
     *                     the name are loaded
     */
    public AfreshLoader(Class<?> service, URL registration, Class<?>... bundles) {
        super(bundles[0].getClassLoader());
        this.service = "META-INF/services/" + service.getName();
        this.registration = registration;
        for (Class<?> part : bundles) {
            String[] names = part.getName().split("\\.");
            anew.put(names[0] + "." + names[1] + ".", part.getClassLoader());
        }
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        synchronized (getClassLoadingLock(name)) {
            Class<?> loaded = findLoadedClass(name);
            if (loaded != null) {
                return loaded;
            }
            for (Map.Entry<String, ClassLoader> bundle : anew.entrySet()) {
                if (name.startsWith(bundle.getKey())) {
                    return define(name, bundle.getValue());
                }
            }
            return shared(name);
        }
    }

    /** A bundle may see libraries that the bundle of the test does not. */
    private Class<?> shared(String name) throws ClassNotFoundException {
        for (ClassLoader bundle : anew.values()) {
            try {
                return bundle.loadClass(name);
            } catch (ClassNotFoundException e) {
                continue;
            }
        }
        throw new ClassNotFoundException(name);
    }

    private Class<?> define(String name, ClassLoader from) throws ClassNotFoundException {
        try (InputStream bytes = from.getResourceAsStream(name.replace('.', '/') + ".class")) {
            if (bytes == null) {
                throw new ClassNotFoundException(name);
            }
            byte[] all = bytes.readAllBytes();
            return defineClass(name, all, 0, all.length);
        } catch (IOException e) {
            throw new ClassNotFoundException(name, e);
        }
    }

    @Override
    protected URL findResource(String name) {
        return anew.values().stream().map(bundle -> bundle.getResource(name)).filter(found -> found != null).findFirst().orElse(null);
    }

    @Override
    public Enumeration<URL> getResources(String name) throws IOException {
        List<URL> all = new ArrayList<>();
        for (ClassLoader bundle : anew.values()) {
            Collections.list(bundle.getResources(name)).stream().filter(found -> !all.contains(found)).forEach(all::add);
        }
        if (service.equals(name)) {
            all.add(registration);
        }
        return Collections.enumeration(all);
    }
}
