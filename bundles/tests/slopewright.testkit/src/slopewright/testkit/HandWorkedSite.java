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
     * Eye over the threshold at B − 2' (2.12 e; Fig 5-19 a): wheels 9 m over it (Table 5-2, desired, 5 to 8 m) and 6.00 m of the eye
     * above them; m.
     */
    public static final double MEHT_M = 15.00;
    /** The wheels over the threshold: 15.00 − 6.00, m. */
    public static final double WHEEL_CLEARANCE_M = 9.00;
    /** Lenses 0.60 m above the threshold: (15.00 − 0.60) / tan 2°48' = 14.40 / 0.048908 = 294.43 m. */
    public static final double DISTANCE_M = 294.43;
    /**
     * The surface rises at 2°30' − 0.57° = 1.93° from 60 m before the threshold (Table 5-3; Fig 5-21). The point 2000 m before it,
     * 60.00 m up, 0.2 m of accuracy each way: (2000 − 60 − 0.2) tan 1.93° − (60.00 + 0.20) = 65.367 − 60.200, m.
     */
    public static final double MARGIN_M = 5.167;
    /** The mast 1000 m before it, 25.00 m up, 0.5 m and 0.3 m: (1000 − 60 − 0.5) tan 1.93° − 25.30 = 31.659 − 25.300, m. */
    public static final double MAST_MARGIN_M = 6.359;
    /** The point that governs. */
    public static final String GOVERNING = "South survey, point 2";

    /**
     * US: the visual threshold crossing height of group 2, 45 ft = 13.716 m, at the lowest on-course signal 2°50', lenses 0.25 m up:
     * 13.466 / tan 2°50' = 272.09 m.
     */
    public static final double OWN_RULES_DISTANCE_M = 272.088;
    /** The height of group 2, m. */
    public static final double OWN_RULES_MEHT_M = 13.716;
    /**
     * The surface rises 1° below the lowest on-course signal, at 1°50', from 91.44 m before the row, which is 180.648 m beyond the
     * threshold, and from the level of the runway there. The point 1500 m before the threshold, 30.00 m up, 0.3 m and 0.2 m:
     * (1500 + 180.648 − 0.3) tan 1°50' − 30.20 = 53.786 − 30.200, m.
     */
    public static final double OWN_RULES_MARGIN_M = 23.586;
    /** The point that governs there. */
    public static final String OWN_RULES_GOVERNING = "North survey, point 1";

    /** A pilot's eye 3.80 m over the hover point (2.0 + 1.8), the lens 0.50 m up, on 6°: 3.30 / tan 6° = 31.40 m. */
    public static final double PORTABLE_DISTANCE_M = 31.397;
    /**
     * 4°30' is 1° below the lowest on-course signal of 5°30' (AC 150/5390-2B 213). The pylon 400 m before the hover point, 8.00 m up,
     * 0.3 m and 0.2 m: 0.50 + (400 + 31.397 − 0.3) tan 4°30' − 8.20 = 34.428 − 8.200, m.
     */
    public static final double PORTABLE_MARGIN_M = 26.228;
    /**
     * The lower edge of the red sector, 2°, with 0.013 m of curvature less refraction (431.097² × 0.87 / 12 742 000):
     * 0.50 + 431.097 tan 2° + 0.013 − 8.20, m.
     */
    public static final double SIGHT_LINE_MARGIN_M = 7.367;
    /** The same 5' lower, at 1°55', m. */
    public static final double TILTED_SIGHT_LINE_MARGIN_M = 6.739;

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
