package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.PointFile;
import slopewright.exchange.map.GeoTiffFile;
import slopewright.exchange.map.MarginRaster;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.site.SiteFrame;

/** Compares many points with an obstacle surface. */
@CommandLine.Command(name = "surface", sortOptions = false,
        description = "Compare points with the obstacle surface of the flags of 'site', or of an aid of a file as it stands. Exits 1 "
                + "with penetrations. With -o the margins go into cells of a GeoTIFF too.")
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

    @Option(names = "--cell-m", paramLabel = "M", converter = NumberWord.Length.class,
            description = "with -o, how wide a cell is (default 10)")
    private Double cellM;

    @Mixin
    private OptionalOutput output;

    @Mixin
    private LanguageOption language;

    @Override
    void extend(CommandSpec target) {
        SitingFlags.addTo(target);
    }

    @Override
    public Integer call() {
        if (most < 1) {
            throw new UsageException("--most takes a number of 1 or more");
        }
        if (cellM != null && output.file().isEmpty()) {
            throw new UsageException("--cell-m goes with -o");
        }
        SitingSource source = SitingSource.of(spec(), new SitingSource.Names(file, aid, end, helipad));
        SurfacePlan surface = source.siting().surface().orElseThrow(() -> new UsageException("there is no obstacle surface: "
                + whyNone(source)));
        source.notes().forEach(note -> streams().warn("slopewright surface: " + note));
        source.tell(streams(), "surface");
        Optional<Path> target = output.file();
        Optional<MarginRaster> raster = target.map(tif -> begin(tif, source, surface));
        PointComparison comparison = new PointComparison(surface.geometry(), most, raster);
        try {
            PointFile.read(points, comparison);
        } catch (ExchangeException e) {
            throw new InputException(e.getMessage());
        }
        raster.ifPresent(cells -> write(target.get(), cells, source, comparison));
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

    private MarginRaster begin(Path tif, SitingSource source, SurfacePlan surface) {
        if (StandardOutput.isMeant(tif) ? json : !tif.toString().toLowerCase(Locale.ROOT).endsWith(".tif")) {
            throw new UsageException("-o takes a file that ends in .tif; - for standard output does not go with --json");
        }
        double wide = cellM == null ? MarginRaster.USUAL_CELL_M : cellM;
        if (!(wide > 0) || wide > MarginRaster.MOST_CELL_M) {
            throw new UsageException("--cell-m takes a length of more than 0 and at most " + (int) MarginRaster.MOST_CELL_M + " m");
        }
        try {
            return MarginRaster.begin(SiteFrame.of(source.host().orElseThrow(() -> new UsageException(
                    "-o needs to know where on Earth the surface lies: name a project file with --aid, --end or --helipad"))),
                    surface.geometry(), wide);
        } catch (SitingException e) {
            throw new InputException(file + ": " + e.getMessage());
        }
    }

    /** What was not compared is not in the cells, and where nothing was there are none. */
    private void write(Path tif, MarginRaster raster, SitingSource source, PointComparison comparison) {
        Argument where = ElementNames.of(source.host().orElseThrow());
        if (comparison.inside() == 0) {
            throw new InputException(points + ": " + Message.of("map.raster.nothing", where).english());
        }
        raster.end(Message.of("map.raster.points", where, Words.quantity(cellM == null ? MarginRaster.USUAL_CELL_M : cellM, Notation.EXACT),
                Words.name(String.valueOf(points.getFileName()))), source.made().orElseThrow(), MessageRenderer.of(language.language()));
        output.write(tif, GeoTiffFile.bytes(raster));
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
