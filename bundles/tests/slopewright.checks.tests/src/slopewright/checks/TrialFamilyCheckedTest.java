package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.testkit.AfreshLoader;

/** A family is added by registering its class as a service; no rule knows of it, and none passes it over. */
class TrialFamilyCheckedTest {
    @TempDir
    private Path folder;

    @Test
    void aVariantOfTheRowIsCheckedLikeTheRow() throws IOException, ReflectiveOperationException {
        Path registration = Files.writeString(folder.resolve("families"), TrialRow.class.getName() + "\n");
        AfreshLoader loader = new AfreshLoader(IndicatorFamily.class, registration.toUri().toURL(), TrialRun.class, Families.class,
                ProjectEvaluation.class);
        Class<?> run = loader.loadClass(TrialRun.class.getName());
        assertNotSame(TrialRun.class, run);
        ((Runnable) run.getConstructor().newInstance()).run();
        assertTrue(Families.find(TrialRow.KEY).isEmpty(), "the product itself does not know it");
    }
}
