package slopewright.headless.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import slopewright.evaluation.landing.SightedObstacles;
import slopewright.evaluation.landing.Sighting;
import slopewright.geometry.Lengths;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.siting.SitingException;
import slopewright.siting.magnetic.SiteVariation;

/** Adds an obstacle that was measured from a helipad. */
@CommandLine.Command(name = "sight", sortOptions = false,
        description = "Add an obstacle that was measured from a helipad by bearing, distance and height or clinometer angle. With a second "
                + "bearing it is a line between both: a wire with --sag-m, else a slope of the ground.")
final class SightCommand extends Command {

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--helipad", required = true, paramLabel = "ID", description = "helipad from whose middle was measured, by id or name")
    private String helipad;

    @Option(names = "--name", required = true, paramLabel = "NAME", description = "what the obstacle is called")
    private String name;

    @Option(names = "--bearing-deg", required = true, paramLabel = "DEG", description = "bearing, true unless --magnetic is given")
    private double bearingDeg;

    @Option(names = "--distance-m", required = true, paramLabel = "M", description = "distance over the ground")
    private String distance;

    @Option(names = "--height-m", paramLabel = "M", description = "height of the top above the TLOF")
    private String height;

    @Option(names = "--angle-deg", paramLabel = "DEG", description = "angle of the top above the horizon instead")
    private Double angleDeg;

    @Option(names = "--to-bearing-deg", paramLabel = "DEG", description = "the other end of a line")
    private Double toBearingDeg;

    @Option(names = "--to-distance-m", paramLabel = "M", description = "the same")
    private String toDistance;

    @Option(names = "--to-height-m", paramLabel = "M", description = "the same")
    private String toHeight;

    @Option(names = "--to-angle-deg", paramLabel = "DEG", description = "the same")
    private Double toAngleDeg;

    @Option(names = "--sag-m", paramLabel = "M", description = "the line is a wire whose middle hangs so far below the straight line")
    private String sag;

    @Option(names = "--crown-radius-m", paramLabel = "M", description = "it is a tree with a crown of this radius")
    private String crown;

    @Option(names = "--magnetic", description = "bearings are by compass")
    private boolean magnetic;

    @Option(names = "--date", paramLabel = "DAY", converter = DateWord.class, description = "day of the measurement (default today)")
    private LocalDate date;

    @Option(names = "--bearing-accuracy-deg", paramLabel = "DEG", defaultValue = "2", description = "assumed 2 where it is not given")
    private double bearingAccuracyDeg;

    @Option(names = "--distance-accuracy-percent", paramLabel = "P", defaultValue = "5", description = "assumed 5 where it is not given")
    private double distanceAccuracyPercent;

    @Option(names = "--angle-accuracy-deg", paramLabel = "DEG", defaultValue = "0.5", description = "assumed 0.5 where it is not given")
    private double angleAccuracyDeg;

    @Option(names = "--height-accuracy-m", paramLabel = "M", defaultValue = "1", description = "assumed 1 where it is not given")
    private String heightAccuracy;

    @Option(names = "--eye-m", paramLabel = "M", defaultValue = "1.6",
            description = "height of the clinometer above the TLOF, assumed 1.6 where it is not given")
    private String eye;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() {
        output.ending(List.of(ProjectFile.EXTENSION));
        output.check();
        Project project = ProjectFiles.load(file);
        Helipad pad = ProjectFiles.pad(project, helipad);
        ApproachHost host = pad.getDirections().stream().findFirst()
                .orElseThrow(() -> new UsageException("helipad " + helipad + " has no approach direction to measure in"));
        try {
            Obstacle obstacle = obstacle(host);
            obstacle.setDate(String.valueOf(date == null ? LocalDate.now() : date));
            project.getAerodrome().getObstacles().add(obstacle);
            Ids.assign(project);
            output.write(project);
            streams().sayf("%s: %s", obstacle.getId(), obstacle.getRemarks());
        } catch (SitingException e) {
            throw new UsageException(e.getMessage());
        }
        return ExitCodes.OK;
    }

    private Obstacle obstacle(ApproachHost host) {
        double turn = magnetic ? SiteVariation.of(host, date == null ? LocalDate.now() : date).variationDeg() : 0;
        Sighting first = new Sighting(bearingDeg + turn, length("--distance-m", distance), optional("--height-m", height), of(angleDeg));
        SightedObstacles made = new SightedObstacles(host, new Sighting.Instrument(bearingAccuracyDeg, 0, distanceAccuracyPercent,
                angleAccuracyDeg, length("--height-accuracy-m", heightAccuracy), length("--eye-m", eye)));
        boolean line = toBearingDeg != null || toDistance != null || toHeight != null || toAngleDeg != null;
        if (crown != null && line || sag != null && !line || line && (toBearingDeg == null || toDistance == null)) {
            throw new UsageException("a line needs --to-bearing-deg and --to-distance-m; --sag-m goes with a line, --crown-radius-m with a "
                    + "single bearing");
        }
        if (!line) {
            return crown == null ? made.point(name, first) : made.tree(name, first, length("--crown-radius-m", crown));
        }
        Sighting second = new Sighting(toBearingDeg + turn, length("--to-distance-m", toDistance), optional("--to-height-m", toHeight),
                of(toAngleDeg));
        return sag == null ? made.slope(name, first, second) : made.wire(name, first, second, length("--sag-m", sag));
    }

    private static OptionalDouble of(Double number) {
        return number == null ? OptionalDouble.empty() : OptionalDouble.of(number);
    }

    private static OptionalDouble optional(String option, String text) {
        return Optional.ofNullable(text).map(given -> OptionalDouble.of(length(option, given))).orElseGet(OptionalDouble::empty);
    }

    private static double length(String option, String text) {
        try {
            return Lengths.parse(text.toLowerCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new UsageException(option + ": " + e.getMessage());
        }
    }
}
