package slopewright.headless.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.Standing;
import slopewright.checks.Verdict;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.sweep.PointSweep;
import slopewright.evaluation.sweep.SweptEnd;
import slopewright.exchange.EndFile;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.sheet.Sheet;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.model.Aerodrome;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectStamp;
import slopewright.model.util.Projects;
import slopewright.siting.SurfacePlan;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;

/** Holds the surfaces of many aerodromes against what stands there, in one table. */
@CommandLine.Command(name = "sweep", sortOptions = false,
        description = "Hold the obstacle surfaces of many aerodromes against what stands there: of every aid of the projects of a "
                + "folder, or of a table of runway ends with the flags of 'site'. Exits 1 where something stands above one, one is not "
                + "evaluated, or the check of an aid is not met.")
final class SweepCommand extends Command {

    @Parameters(paramLabel = "FOLDER|TABLE", description = "folder of projects, or runway ends as CSV with the columns "
            + "id, aerodrome, latitudeDeg, longitudeDeg, trueBearingDeg, elevationM, verticalDatum, in this order")
    private Path what;

    @Mixin
    private SweepPoints against;

    @Option(names = "--part", paramLabel = "I/N", description = "only the I-th of N parts, which one after the other are the whole: of the "
            + "rows of the table, or of the projects of the folder")
    private String part;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Option(names = "--csv", description = "print a table")
    private boolean csv;

    /** Whether the check of an aid is not met, whatever its surface says: where it stands may be wrong. */
    private boolean contradicted;

    @Override
    void extend(CommandSpec target) {
        SitingFlags.addTo(target);
    }

    @Override
    public Integer call() {
        if (json && csv) {
            throw new UsageException("--json and --csv exclude each other");
        }
        WorkPart share = WorkPart.of(part);
        boolean folder = Files.isDirectory(what);
        if (!folder && against.isEmpty()) {
            throw new UsageException("a table of runway ends is held against something: --against");
        }
        if (folder) {
            SitingFlags.firstBesideRuleSet(spec()).ifPresent(flag -> {
                throw new UsageException("a folder holds aids as they stand; leave " + flag + " away");
            });
        }
        Optional<PointSweep> sweep = against.isEmpty() ? Optional.empty() : Optional.of(against.read());
        List<Supplier<SweepRow>> work = folder ? projects(sweep, share) : share.of(ends(sweep.orElseThrow()));
        List<SweepRow> rows = work.parallelStream().map(Supplier::get).toList();
        print(rows);
        if (rows.stream().allMatch(row -> row.state() == SweepRow.State.NOT_EVALUATED)) {
            return ExitCodes.NOTHING_EVALUATED;
        }
        return contradicted || rows.stream().anyMatch(row -> row.state() == SweepRow.State.NOT_EVALUATED
                || row.state() == SweepRow.State.ABOVE)
                ? ExitCodes.FINDINGS : ExitCodes.OK;
    }

    private List<Supplier<SweepRow>> ends(PointSweep sweep) {
        SitingSource source = SitingSource.of(spec(), new SitingSource.Names(null, null, null, null));
        ProtectionSurface surface = source.siting().surface().map(SurfacePlan::geometry).orElseThrow(() -> new UsageException(
                "there is no obstacle surface: " + source.siting().noSurface().map(Message::english).orElse("the rule set gives none")));
        EndFile table;
        try {
            table = EndFile.read(what);
        } catch (ExchangeException e) {
            throw InputException.of(e);
        }
        RuleSet rules = ProjectFiles.rules(SitingFlags.text(spec(), "rule-set"));
        String ruleSet = rules.key() + ":" + rules.edition();
        List<Supplier<SweepRow>> work = new ArrayList<>();
        for (SweptEnd end : table.ends()) {
            Map<String, String> named = Map.of("file", what.getFileName().toString(), "aerodrome", end.aerodrome(), "end", end.id(),
                    "ruleSet", ruleSet);
            work.add(() -> points(named, sweep, end.verticalDatum(), end.frame(), surface, against.isComplete()));
        }
        table.refused().forEach(fault -> work.add(() -> SweepRow.none(Map.of("file", what.getFileName().toString()), fault.getMessage())));
        return work;
    }

    private SweepRow points(Map<String, String> named, PointSweep sweep, String datum, SiteFrame frame, ProtectionSurface surface,
            boolean everything) {
        if (!against.hasDatum(datum)) {
            return SweepRow.none(named, "the points are in another vertical datum than " + (datum == null ? "none" : "'" + datum + "'"));
        }
        if (frame.isPlane()) {
            return SweepRow.none(named, "the aerodrome lies on a local plane, of which nobody knows where on Earth it is");
        }
        return SweepRow.of(named, sweep, sweep.compare(frame, surface), everything);
    }

    private List<Supplier<SweepRow>> projects(Optional<PointSweep> sweep, WorkPart share) {
        List<Path> files;
        try (Stream<Path> all = Files.walk(what)) {
            files = all.filter(Files::isRegularFile).filter(file -> file.toString().endsWith("." + ProjectFile.EXTENSION)).sorted()
                    .toList();
        } catch (IOException e) {
            throw new InputException(what + ": cannot be read: " + e.getMessage());
        }
        if (files.isEmpty()) {
            throw new InputException(what + ": holds no project");
        }
        List<Supplier<SweepRow>> work = new ArrayList<>();
        for (Path file : share.of(files)) {
            String name = what.relativize(file).toString().replace('\\', '/');
            try {
                Project project = ProjectFiles.load(file);
                String stamp = ProjectStamp.of(project).map(ProjectStamp::sha256).orElse("");
                ProjectEvaluation evaluation = ProjectFiles.evaluation(project, SitingFlags.text(spec(), "rule-set"));
                List<AidEvaluation> aids = evaluation.aids();
                CheckResult check = Checks.run(evaluation, rule -> true);
                aids.forEach(aid -> work.add(aid(aid, named(aid, name, stamp, Standing.of(List.of(aid), check)), sweep)));
                if (aids.isEmpty()) {
                    work.add(() -> SweepRow.none(Map.of("file", name, "projectFileSha256", stamp), "the project has no approach aid"));
                }
            } catch (InputException e) {
                work.add(() -> SweepRow.none(Map.of("file", name), e.getMessage()));
            }
        }
        return work;
    }

    private Map<String, String> named(AidEvaluation aid, String file, String stamp, Standing standing) {
        Map<String, String> named = new LinkedHashMap<>();
        named.put("file", file);
        named.put("projectFileSha256", stamp);
        Aerodrome aerodrome = aid.project().getAerodrome();
        named.put("aerodrome", aerodrome.getIdentifier() == null ? Projects.label(aerodrome) : aerodrome.getIdentifier());
        named.put("end", Projects.label(aid.host()));
        named.put("aid", Projects.label(aid.aid()));
        named.put("ruleSet", aid.rules().key() + ":" + aid.rules().edition());
        named.put("verdict", standing.words().english());
        contradicted |= standing.verdict() == Verdict.NOT_MET;
        return named;
    }

    /** What stands in the project is compared at once, for an evaluation is not for several threads; points are compared later. */
    private Supplier<SweepRow> aid(AidEvaluation aid, Map<String, String> named, Optional<PointSweep> sweep) {
        Attempt<SurfaceComparison> compared = aid.obstacles();
        if (compared.value().isEmpty()) {
            String reason = compared.reason().map(Message::english).orElse("there is no obstacle surface");
            return () -> SweepRow.none(named, reason);
        }
        SurfaceComparison found = compared.value().get();
        boolean surveyed = aid.isSurveyed();
        SweepRow own = own(named, found, surveyed || sweep.isPresent());
        if (sweep.isEmpty()) {
            return () -> own;
        }
        SiteFrame frame = aid.frame().orThrow();
        String datum = aid.project().getAerodrome().getVerticalDatum();
        return () -> own.with(points(named, sweep.get(), datum, frame, found.surface(), surveyed || against.isComplete()));
    }

    private static SweepRow own(Map<String, String> named, SurfaceComparison found, boolean known) {
        Optional<ObstacleComparison> governing = found.governing();
        OptionalDouble margin = found.marginM();
        long above = found.inside().stream().mapToLong(each -> each.block().map(block -> (long) block.above())
                .orElse(each.marginM() < 0 ? 1L : 0L)).sum();
        long inside = found.inside().stream().mapToLong(each -> each.block().map(block -> (long) block.inside()).orElse(1L)).sum();
        String reason = !found.uncompared().isEmpty() ? found.uncompared().get(0).reason().english()
                : known ? "" : "no survey says that nothing else stands there";
        SweepRow.State state = above > 0 ? SweepRow.State.ABOVE : !reason.isEmpty() ? SweepRow.State.NOT_EVALUATED
                : governing.isPresent() ? SweepRow.State.BELOW : SweepRow.State.NOTHING_INSIDE;
        return new SweepRow(named, state, reason, inside, above, governing.map(ObstacleComparison::label).orElse(""), Optional.empty(),
                margin);
    }

    private void print(List<SweepRow> rows) {
        String hashes = String.join(" ", against.hashes());
        if (csv) {
            streams().print(new Sheet("Sweep", SweepRow.COLUMNS, rows.stream().map(row -> row.cells(hashes)).toList(), List.of()));
        } else if (json) {
            ObjectNode node = Json.object();
            ArrayNode files = node.putArray("againstSha256");
            against.hashes().forEach(files::add);
            ArrayNode list = node.putArray("rows");
            rows.forEach(row -> list.add(row.json()));
            Json.print(node, streams().out);
        } else {
            rows.forEach(row -> streams().sayf("%-14s %-10s %s%s", row.state().word(), row.marginM().isEmpty() ? "-"
                    : String.format(Locale.ROOT, "%.2f m", row.marginM().getAsDouble()), String.join(" / ", SweepRow.NAMES.stream()
                    .filter(name -> !"projectFileSha256".equals(name)).map(name -> row.named().getOrDefault(name, ""))
                    .filter(text -> !text.isEmpty()).toList()), row.reason().isEmpty() ? row.governing().isEmpty() ? ""
                    : ": " + row.governing() : ": " + row.reason()));
        }
    }
}
