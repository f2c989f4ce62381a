package slopewright.bench;

import java.nio.file.Path;
import java.util.Optional;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.siting.Approach;
import slopewright.siting.Families;
import slopewright.siting.Input;
import slopewright.siting.SitingRequest;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** One siting, one full check and one load of a project, warm. */
public final class CoreBench {

    private static final int TIMES = 3;
    private static final int SITINGS = 20_000;
    private static final int CHECKS = 200;

    private CoreBench() {
    }

    /** Runs with the name of a project file. */
    public static void main(String[] args) throws Exception {
        RuleSet rules = RuleSets.find("icao").orElseThrow();
        SitingRequest request = SitingRequest.builder().set(Input.SLOPE, 3.0).set(Input.RUNWAY_WIDTH, 45.0).set(Input.CODE, 4.0)
                .set(Input.EYE_TO_WHEEL, 6.63).approach(Approach.INSTRUMENT).build();
        Took siting = Took.best(TIMES, () -> {
            for (int i = 0; i < SITINGS; i++) {
                if (Families.site("four-unit-row", request, rules).units().size() != 4) {
                    throw new IllegalStateException();
                }
            }
        });
        System.out.printf("siting of a row of four: %.1f microseconds%n", siting.clock() / SITINGS * 1e6);
        Project project = ProjectFile.load(Path.of(args[0]));
        int[] outcomes = {0};
        Took check = Took.best(TIMES, () -> {
            for (int i = 0; i < CHECKS; i++) {
                CheckResult result = Checks.run(project, Optional.empty());
                outcomes[0] = result.outcomes().size();
            }
        });
        System.out.printf("full check of the demo, %d outcomes: %.2f ms%n", outcomes[0], check.clock() / CHECKS * 1e3);
        Runtime runtime = Runtime.getRuntime();
        System.gc();
        System.out.printf("memory in use after that: %d MB%n", (runtime.totalMemory() - runtime.freeMemory()) >> 20);
    }
}
