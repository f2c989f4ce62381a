package slopewright.headless.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.map.GeoJsonFile;
import slopewright.exchange.map.GeoPackageFile;
import slopewright.exchange.map.GeoTiffFile;
import slopewright.exchange.map.KmlFile;
import slopewright.exchange.map.MapDocument;
import slopewright.exchange.map.MapExport;
import slopewright.exchange.map.MarginRaster;
import slopewright.exchange.publish.AixmFile;
import slopewright.exchange.publish.PublishedData;
import slopewright.exchange.settingout.PointList;
import slopewright.messages.MessageRenderer;
import slopewright.model.Project;
import slopewright.siting.SitingException;

/** Writes a project as a map. */
@CommandLine.Command(name = "export", sortOptions = false,
        description = "Write units, beams, obstacle surfaces, runways, helipads and obstacles of a project for maps: GeoJSON, KML (.kmz "
                + "with icons) or GeoPackage (.gpkg) by the ending of the file; or the lenses of all units as points for a total "
                + "station: LandXML (.xml) or PNEZD (.txt); or what is published of all indicators at runways: AIXM 5.1 (.aixm); or the "
                + "margin to the obstacle surface of one aid in cells (.tif). "
                + "Heights are elevations in the vertical datum of the aerodrome, which the file names.")
final class ExportCommand extends Command {

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Mixin
    private OutputOptions output;

    @Option(names = "--aid", paramLabel = "ID", description = "one approach aid only, by id or name (default all)")
    private String aid;

    @Option(names = "--rule-set", paramLabel = "KEY", description = "rule set instead of the aids' or project's own")
    private String ruleSet;

    @Option(names = "--beam-length-m", paramLabel = "M", converter = NumberWord.Length.class, defaultValue = "5000",
            description = "how far beams are drawn (default 5000)")
    private double beamLengthM;

    @Option(names = "--date", paramLabel = "DAY", converter = DateWord.class,
            description = "day to print in LandXML and AIXM, of the form 2026-01-31 (default today)")
    private LocalDate date;

    @Option(names = "--cell-m", paramLabel = "M", converter = NumberWord.Length.class,
            description = "with .tif, how wide a cell is (default 10)")
    private Double cellM;

    @Mixin
    private LanguageOption language;

    @Override
    public Integer call() {
        String ending = output.ending(List.of("geojson", "json", "kml", "kmz", "gpkg", "xml", "txt", "aixm", "tif"));
        output.check();
        if (!(beamLengthM > 0) || beamLengthM > MapExport.MOST_BEAM_M) {
            throw new UsageException("--beam-length-m takes a length of more than 0 and at most " + (int) MapExport.MOST_BEAM_M + " m");
        }
        if (cellM != null && (!"tif".equals(ending) || !(cellM > 0) || cellM > MarginRaster.MOST_CELL_M)) {
            throw new UsageException("--cell-m goes with .tif and takes a length of more than 0 and at most "
                    + (int) MarginRaster.MOST_CELL_M + " m");
        }
        Project project = ProjectFiles.load(file);
        MessageRenderer words = MessageRenderer.of(language.language());
        ProjectEvaluation evaluation = ProjectFiles.evaluation(project, Optional.ofNullable(ruleSet));
        List<AidEvaluation> aids = aid == null ? evaluation.aids() : List.of(evaluation.aid(ProjectFiles.aid(project, aid)));
        Judged judged = Judged.of(evaluation);
        if (List.of("xml", "txt", "aixm").contains(ending)) {
            units(evaluation, judged, ending, words);
            judged.tell(streams(), "export");
            return ExitCodes.OK;
        }
        if ("tif".equals(ending)) {
            margins(aids, judged, words);
            judged.tell(streams(), "export");
            return ExitCodes.OK;
        }
        MapDocument map = MapExport.of(evaluation, aids, beamLengthM, words).from(judged.made());
        output.write(switch (ending) {
            case "kml" -> KmlFile.bytes(map);
            case "kmz" -> KmlFile.packed(map);
            case "gpkg" -> GeoPackageFile.bytes(map);
            default -> GeoJsonFile.bytes(map);
        });
        map.notes().forEach(note -> streams().warn("slopewright export: " + note));
        judged.tell(streams(), "export");
        return ExitCodes.OK;
    }

    /** Writes the cells of one surface: those of several would lie over each other. */
    private void margins(List<AidEvaluation> aids, Judged judged, MessageRenderer words) {
        if (aids.size() != 1) {
            throw new UsageException(".tif holds the surface of one aid: name it by --aid");
        }
        try {
            AidEvaluation one = aids.get(0);
            MarginRaster raster = MarginRaster.of(one, cellM == null ? MarginRaster.USUAL_CELL_M : cellM, judged.made().under(one.rules()),
                    words);
            raster.notes().forEach(note -> streams().warn("slopewright export: " + note));
            output.write(GeoTiffFile.bytes(raster));
        } catch (SitingException e) {
            throw new InputException(file + ": " + e.getMessage());
        }
    }

    /** Writes the lenses of all units for a total station, or what is published of all indicators. */
    private void units(ProjectEvaluation evaluation, Judged judged, String ending, MessageRenderer words) {
        if (aid != null) {
            throw new UsageException("--aid does not go with ." + ending + ", which holds every indicator");
        }
        LocalDate day = date == null ? LocalDate.now() : date;
        if ("aixm".equals(ending)) {
            output.write(AixmFile.bytes(PublishedData.of(evaluation), evaluation.project(), judged.made(), day, words));
            return;
        }
        try {
            PointList points = PointList.of(evaluation, day).from(judged.made());
            output.write("xml".equals(ending) ? points.landXml(day, words) : points.pnezd(words));
        } catch (SitingException e) {
            throw new InputException(file + ": " + e.getMessage());
        }
    }
}
