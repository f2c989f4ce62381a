package slopewright.drawing;

import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.AidEvaluation;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;

/** A family is added by registering its class as a service; no other class knows of it. The product around it is loaded afresh. */
class TrialFamilyDrawnTest {

    private static final String SERVICE = "META-INF/services/" + IndicatorFamily.class.getName();

    @TempDir
    private Path folder;

    /** Loads siting, evaluation, drawing and the trial anew, with one more registered family; everything below them is shared. */
    private static final class Afresh extends ClassLoader {

        private final URL registration;

        Afresh(URL registration) {
            super(TrialFamilyDrawnTest.class.getClassLoader());
            this.registration = registration;
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            synchronized (getClassLoadingLock(name)) {
                Class<?> loaded = findLoadedClass(name);
                if (loaded != null) {
                    return loaded;
                }
                if (name.startsWith("slopewright.siting.")) {
                    return define(name, Families.class.getClassLoader());
                }
                if (name.startsWith("slopewright.evaluation.")) {
                    return define(name, AidEvaluation.class.getClassLoader());
                }
                return name.startsWith("slopewright.drawing.") ? define(name, getParent()) : shared(name);
            }
        }

        /** Siting may see libraries that drawing does not. */
        private Class<?> shared(String name) throws ClassNotFoundException {
            try {
                return getParent().loadClass(name);
            } catch (ClassNotFoundException e) {
                return Families.class.getClassLoader().loadClass(name);
            }
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
        public Enumeration<URL> getResources(String name) throws IOException {
            if (!SERVICE.equals(name)) {
                return super.getResources(name);
            }
            List<URL> all = new ArrayList<>(Collections.list(Families.class.getClassLoader().getResources(name)));
            all.add(registration);
            return Collections.enumeration(all);
        }
    }

    @Test
    void aRegisteredFamilyIsLaidOutReadAndDrawn() throws IOException, ReflectiveOperationException {
        Path registration = Files.writeString(folder.resolve("families"), TrialBox.class.getName() + "\n");
        Class<?> run = new Afresh(registration.toUri().toURL()).loadClass(TrialRun.class.getName());
        assertNotSame(TrialRun.class, run);
        ((Runnable) run.getConstructor().newInstance()).run();
        assertTrue(Families.find("trial-box").isEmpty(), "the product itself does not know it");
    }
}
