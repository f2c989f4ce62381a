package slopewright.testkit;

import java.nio.file.Path;

import slopewright.geometry.FramePoint;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/**
 * An invented site on a level plane, 100 m up, whose figures are worked out on paper from the clauses, in the comments here: a row of four
 * at end 36 under Annex 14 Vol I, 9th edition, one at end 18 under the US rule set of its own, a portable tri-colour unit at a pad, and
 * two blocks of survey points.
 */
public final class HandWorkedSite {
    /** The row at end 36. */
    public static final String ROW = "Row 36";
    /** The row at end 18, under {@code faa:2010}. */
    public static final String OWN_RULES_ROW = "Row 18";
    /** The portable unit. */
    public static final String PORTABLE = "Portable unit";

    /**
     * Eye over the threshold at B − 2' (2.12 e; Fig 5-19 a): wheels 9 m over it (Table 5-2, desired, 5 to 8 m) and 6.00 m of the eye above
     * them; m.
     */
    public static final double MEHT_M = 15.00;
    /** The wheels over the threshold: 15.00 − 6.00, m. */
    public static final double WHEEL_CLEARANCE_M = 9.00;
    /** Lenses 0.60 m above the threshold: (15.00 − 0.60) / tan 2°48' = 14.40 / 0.048908 = 294.43 m. */
    public static final double DISTANCE_M = 294.43;
    /**
     * The surface rises at 2°30' − 0.57° = 1.93° from 60 m before the threshold (Table 5-3; Fig 5-21). The point 2000 m before it, 60.00 m
     * up, 0.2 m of accuracy each way: (2000 − 60 − 0.2) tan 1.93° − (60.00 + 0.20) = 65.367 − 60.200, m.
     */
    public static final double MARGIN_M = 5.167;
    /** The mast 1000 m before it, 25.00 m up, 0.5 m and 0.3 m: (1000 − 60 − 0.5) tan 1.93° − 25.30 = 31.659 − 25.300, m. */
    public static final double MAST_MARGIN_M = 6.359;
    /** The point that governs. */
    public static final String GOVERNING = "South survey, point 1";

    /**
     * US: the visual threshold crossing height of group 2, 45 ft = 13.716 m, at the lowest on-course signal 2°50', lenses 0.40 m up:
     * 13.316 / tan 2°50' = 269.06 m.
     */
    public static final double OWN_RULES_DISTANCE_M = 269.057;
    /** The height of group 2, m. */
    public static final double OWN_RULES_MEHT_M = 13.716;
    /**
     * The surface rises 1° below the lowest on-course signal, at 1°50', from 91.44 m before the row, which is 177.617 m beyond the
     * threshold, and from the level of the runway there. The point 1500 m before the threshold, 30.00 m up, 0.3 m and 0.2 m:
     * (1500 + 177.617 − 0.3) tan 1°50' − 30.20 = 53.689 − 30.200, m.
     */
    public static final double OWN_RULES_MARGIN_M = 23.489;
    /** The point that governs there. */
    public static final String OWN_RULES_GOVERNING = "North survey, point 0";

    private HandWorkedSite() {
    }

    /**
     * Writes the project and its blocks into a folder.
     *
     * @return the project's file
     */
    public static Path write(Path folder) {
        Project project = DemoProjects.load(DemoProjects.root().resolve("bundles/tests/slopewright.testkit/sites/hand-worked.slopewright"));
        Path file = folder.resolve("hand-worked.slopewright");
        try {
            ProjectFile.save(project, file);
            add(project, "36", "South survey", 0.2, 0.2, new FramePoint(-1800, 50, 40), new FramePoint(-2000, 0, 60));
            add(project, "18", "North survey", 0.3, 0.2, new FramePoint(-1500, 100, 30));
            Ids.assign(project);
            ProjectFile.save(project, file);
        } catch (ProjectFileException e) {
            throw new AssertionError(e);
        }
        return file;
    }

    private static void add(Project project, String end, String name, double horizontalM, double verticalM, FramePoint... points) {
        RunwayEnd host = Projects.hosts(project).stream().filter(found -> end.equals(found.getDesignator())).map(RunwayEnd.class::cast)
                .findFirst().orElseThrow();
        SurveyBlock block = SurveySamples.add(project, host, name, points);
        block.setKind("obstacles");
        block.setHorizontalAccuracyM(horizontalM);
        block.setVerticalAccuracyM(verticalM);
        block.setSource("invented");
        block.setDate("2026-05-12");
    }
}
