package slopewright.headless.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.landing.LandingCell;
import slopewright.evaluation.landing.LandingDirections;
import slopewright.evaluation.landing.LandingSites;
import slopewright.evaluation.landing.LandingSpeed;
import slopewright.evaluation.landing.LandingWind;
import slopewright.evaluation.landing.SettableSlopes;
import slopewright.model.ApproachAid;
import slopewright.model.Helipad;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.magnetic.SiteVariation;

/** Looks all round a helipad for landing directions that are clear. */
@CommandLine.Command(name = "directions", sortOptions = false,
        description = "Look all round a helipad for landing directions and slopes that are clear of obstacles. Exits 1 where none is, or "
                + "where the aid as it stands is not clear.")
final class DirectionsCommand extends Command {

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--aid", paramLabel = "ID", description = "approach aid in the file, by id or name")
    private String aid;

    @Option(names = "--helipad", paramLabel = "ID",
            description = "helipad in the file, by id or name; the unit that stands there, a portable one first, or one that is proposed")
    private String helipad;

    @Option(names = "--family", paramLabel = "KEY", description = "with --helipad: a unit of this family (default heliport-sector where "
            + "none stands there)")
    private String family;

    @Option(names = "--rule-set", paramLabel = "KEY", description = "rule set instead of the aid's or project's own")
    private String ruleSet;

    @Option(names = "--speed-kt", paramLabel = "KT", description = "true air speed along the path, for the rate of descent")
    private Double speedKt;

    @Option(names = "--ground-speed-kt", paramLabel = "KT",
            description = "speed over the ground instead (default that of the aid, where it has one)")
    private Double groundSpeedKt;

    @Option(names = "--wind", paramLabel = "FROM/KT", converter = WindWord.class,
            description = "wind: degrees true from which it blows, and knots, as 240/15 (default still air)")
    private LandingWind wind;

    @Option(names = "--step-deg", paramLabel = "DEG", defaultValue = "0.1", description = "from one slope to the next (default 0.1)")
    private double stepDeg;

    @Option(names = "--date", paramLabel = "DAY", converter = DateWord.class,
            description = "day for the magnetic variation, of the form 2026-01-31 (default today)")
    private LocalDate date;

    @Option(names = "--slopes", description = "in JSON and CSV, every slope of every direction")
    private boolean slopes;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Option(names = "--csv", description = "print a table")
    private boolean csv;

    @Override
    public Integer call() {
        Project project = ProjectFiles.load(file);
        try {
            AidEvaluation evaluation = evaluation(project);
            LandingDirections found = LandingDirections.of(evaluation, SettableSlopes.of(evaluation, stepDeg));
            DirectionsOutput output = new DirectionsOutput(evaluation, found, new DirectionsOutput.Asked(speed(evaluation.aid()),
                    Optional.ofNullable(wind), variation(evaluation), slopes));
            if (json) {
                Json.print(output.json(), MadeFrom.of(project, evaluation.rules()), streams().out);
            } else if (csv) {
                streams().print(output.sheet());
            } else {
                output.print(streams());
            }
            return code(evaluation, found);
        } catch (SitingException e) {
            throw new UsageException(e.getMessage());
        }
    }

    private AidEvaluation evaluation(Project project) {
        if (aid == null == (helipad == null)) {
            throw new UsageException("name either an approach aid with --aid or a helipad with --helipad");
        }
        if (aid != null) {
            if (family != null) {
                throw new UsageException("--family goes with --helipad; the family of an aid is its own");
            }
            return ProjectFiles.evaluation(project, ProjectFiles.aid(project, aid), Optional.ofNullable(ruleSet));
        }
        ProjectEvaluation whole = ProjectFiles.evaluation(project, Optional.ofNullable(ruleSet));
        Helipad pad = ProjectFiles.pad(project, helipad);
        return LandingSites.of(whole, pad, Optional.ofNullable(family));
    }

    private Optional<LandingSpeed> speed(ApproachAid of) {
        if (speedKt != null && groundSpeedKt != null) {
            throw new UsageException("name either --speed-kt or --ground-speed-kt");
        }
        if (speedKt != null) {
            return Optional.of(new LandingSpeed(LandingSpeed.Kind.AIR, speedKt));
        }
        return groundSpeedKt != null ? Optional.of(new LandingSpeed(LandingSpeed.Kind.GROUND, groundSpeedKt)) : LandingSpeed.of(of);
    }

    /** Returns the magnetic variation, empty where nobody can say: then bearings are true alone. */
    private OptionalDouble variation(AidEvaluation evaluation) {
        try {
            return OptionalDouble.of(SiteVariation.of(evaluation.host(), date == null ? LocalDate.now() : date).variationDeg());
        } catch (SitingException e) {
            streams().warn("slopewright directions: bearings are true alone: " + e.getMessage());
            return OptionalDouble.empty();
        }
    }

    private static int code(AidEvaluation evaluation, LandingDirections found) {
        boolean known = found.directions().stream().flatMap(direction -> direction.cells().stream())
                .anyMatch(cell -> cell.state() != LandingCell.State.NOT_EVALUATED);
        if (!known) {
            return ExitCodes.NOTHING_EVALUATED;
        }
        boolean any = found.directions().stream().anyMatch(direction -> direction.clearFromDeg().isPresent());
        boolean own = evaluation.isProposal() || evaluation.siting().value()
                .flatMap(siting -> found.at(evaluation.frame().orThrow().bearingDeg()).at(siting.slopeDeg()))
                .filter(LandingCell::isClear).isPresent();
        return any && own ? ExitCodes.OK : ExitCodes.FINDINGS;
    }

    /** Returns the name of an aid with that of its place. */
    static String label(AidEvaluation evaluation) {
        return Projects.path(evaluation.aid());
    }
}
