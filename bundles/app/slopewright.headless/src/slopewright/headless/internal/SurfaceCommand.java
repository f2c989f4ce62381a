package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.List;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.PointFile;
import slopewright.messages.Message;
import slopewright.siting.SurfacePlan;

/** Compares many points with an obstacle surface. */
@CommandLine.Command(name = "surface", sortOptions = false,
        description = "Compare points with the obstacle surface of the flags of 'site', or of an aid of a file as it stands. Exits 1 "
                + "with penetrations.")
final class SurfaceCommand extends Command {


    @Parameters(arity = "0..1", paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--aid", paramLabel = "ID", description = "approach aid in the file, by id or name")
    private String aid;

    @Option(names = "--end", paramLabel = "ID", description = "runway end in the file, to solve there")
    private String end;

    @Option(names = "--helipad", paramLabel = "ID", description = "helipad or approach direction in the file, to solve there")
    private String helipad;

    @Option(names = "--points", required = true, paramLabel = "FILE", description = "points: CSV with the header id,alongM,rightM,heightM")
    private Path points;

    @Option(names = "--most", defaultValue = "100000", paramLabel = "N",
            description = "list at most so many penetrations, the worst (default 100000)")
    private int most;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Override
    void extend(CommandSpec target) {
        SitingFlags.addTo(target);
    }

    @Override
    public Integer call() {
        if (most < 1) {
            throw new UsageException("--most takes a number of 1 or more");
        }
        SitingSource source = SitingSource.of(spec(), new SitingSource.Names(file, aid, end, helipad));
        SurfacePlan surface = source.siting().surface().orElseThrow(() -> new UsageException("there is no obstacle surface: "
                + whyNone(source)));
        source.notes().forEach(note -> streams().warn("slopewright surface: " + note));
        source.tell(streams(), "surface");
        PointComparison comparison = new PointComparison(surface.geometry(), most);
        try {
            PointFile.read(points, comparison);
        } catch (ExchangeException e) {
            throw new InputException(e.getMessage());
        }
        if (json) {
            source.printJson(json(surface, comparison), streams().out);
        } else {
            print(comparison);
        }
        if (comparison.points() == 0) {
            streams().warn("slopewright surface: " + points + ": holds no point, so nothing was compared");
            return ExitCodes.NOTHING_EVALUATED;
        }
        return comparison.penetrations() > 0 ? ExitCodes.FINDINGS : ExitCodes.OK;
    }

    private static String whyNone(SitingSource source) {
        return source.siting().noSurface().map(Message::english).orElse("the rule set gives none");
    }

    private static ObjectNode json(SurfacePlan surface, PointComparison comparison) {
        ObjectNode node = Json.object();
        node.put("points", comparison.points());
        node.put("inside", comparison.inside());
        node.put("penetrationCount", comparison.penetrations());
        ArrayNode list = node.putArray("penetrations");
        comparison.worstFirst().forEach(hit -> list.add(json(hit)));
        if (comparison.worst().isPresent()) {
            node.set("worst", json(comparison.worst().get()));
        } else {
            node.putNull("worst");
        }
        node.set("obstacleSurface", SitingOutput.surface(surface));
        return node;
    }

    private static ObjectNode json(PointComparison.Hit hit) {
        ObjectNode node = Json.object();
        node.put("id", hit.id());
        node.put("line", hit.line());
        Json.put(node, "alongM", hit.alongM());
        Json.put(node, "rightM", hit.rightM());
        Json.put(node, "heightM", hit.heightM());
        Json.put(node, "limitM", hit.heightM() - hit.excessM());
        Json.put(node, "excessM", hit.excessM());
        return node;
    }

    private void print(PointComparison comparison) {
        streams().sayf("%d points, %d under or through the surface, %d through it", comparison.points(), comparison.inside(),
                comparison.penetrations());
        List<PointComparison.Hit> hits = comparison.worstFirst();
        for (PointComparison.Hit hit : hits) {
            streams().sayf("  %-16s line %-8d along %10.2f m, right %9.2f m, height %8.2f m, limit %8.2f m, excess %7.2f m",
                    hit.id(), hit.line(), hit.alongM(), hit.rightM(), hit.heightM(), hit.heightM() - hit.excessM(), hit.excessM());
        }
        comparison.worst().filter(hit -> hits.isEmpty()).ifPresent(hit -> streams().sayf(
                "  the governing point %s (line %d) stays %.2f m below the surface", hit.id(), hit.line(), -hit.excessM()));
    }
}
