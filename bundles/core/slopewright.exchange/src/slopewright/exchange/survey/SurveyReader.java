package slopewright.exchange.survey;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import slopewright.exchange.ExchangeException;
import slopewright.geometry.Decimals;

/** What the readers of all formats share. */
abstract class SurveyReader {

    private static final Map<String, SurveyShape.Fact> NAMES = Map.ofEntries(Map.entry("id", SurveyShape.Fact.ID),
            Map.entry("name", SurveyShape.Fact.NAME), Map.entry("topelevationm", SurveyShape.Fact.TOP_ELEVATION),
            Map.entry("topelevation", SurveyShape.Fact.TOP_ELEVATION), Map.entry("elevationm", SurveyShape.Fact.ELEVATION),
            Map.entry("elevation", SurveyShape.Fact.ELEVATION), Map.entry("ele", SurveyShape.Fact.ELEVATION),
            Map.entry("heightm", SurveyShape.Fact.HEIGHT), Map.entry("height", SurveyShape.Fact.HEIGHT),
            Map.entry("groundelevationm", SurveyShape.Fact.GROUND_ELEVATION),
            Map.entry("groundelevation", SurveyShape.Fact.GROUND_ELEVATION),
            Map.entry("horizontalaccuracym", SurveyShape.Fact.HORIZONTAL_ACCURACY),
            Map.entry("verticalaccuracym", SurveyShape.Fact.VERTICAL_ACCURACY), Map.entry("source", SurveyShape.Fact.SOURCE),
            Map.entry("date", SurveyShape.Fact.DATE));

    /** What the maps of this program hold beside obstacles. */
    private static final Set<String> OTHER_KINDS = Set.of("unit", "beam", "sector-edge", "surface", "runway", "threshold", "helipad",
            "survey-point");

    private final Path file;
    private final SurveyFile.Sink sink;
    private final Map<String, Integer> passedOver = new TreeMap<>();

    SurveyReader(Path file, SurveyFile.Sink sink) {
        this.file = file;
        this.sink = sink;
    }

    abstract void read() throws IOException, ExchangeException;

    Path file() {
        return file;
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        passedOver.forEach((what, count) -> notes.add(count + " " + what + " passed over"));
        return notes;
    }

    void passOver(String what) {
        passedOver.merge(what, 1, Integer::sum);
    }

    ExchangeException fault(long line, String reason) {
        return new ExchangeException(file.toString(), line, reason);
    }

    static Optional<SurveyShape.Fact> fact(String name) {
        return Optional.ofNullable(NAMES.get(name.strip().toLowerCase(Locale.ROOT)));
    }

    /** Returns whether a feature is of a kind that no survey has: a unit or a surface of a map that this program wrote. */
    boolean isOther(String kind) {
        if (!OTHER_KINDS.contains(kind)) {
            return false;
        }
        passOver("features of the kind " + kind);
        return true;
    }

    double number(String text, String what, long line) throws ExchangeException {
        try {
            return Decimals.parse(text);
        } catch (IllegalArgumentException e) {
            throw fault(line, what + ": " + e.getMessage());
        }
    }

    void emit(SurveyShape.Kind kind, boolean grid, List<SurveyVertex> vertices, Map<SurveyShape.Fact, String> facts, long line)
            throws ExchangeException {
        List<SurveyVertex> open = kind == SurveyShape.Kind.AREA && vertices.size() > 1
                && isSame(vertices.get(0), vertices.get(vertices.size() - 1)) ? vertices.subList(0, vertices.size() - 1) : vertices;
        int least = kind.ordinal() + 1;
        if (open.size() < least) {
            throw fault(line, "a shape has " + open.size() + " positions where " + least + " are needed");
        }
        for (SurveyVertex vertex : open) {
            if (!grid && !(Math.abs(vertex.north()) <= 90 && Math.abs(vertex.east()) <= 180)) {
                throw fault(line, "latitude " + vertex.north() + " and longitude " + vertex.east() + " are out of range");
            }
        }
        sink.accept(new SurveyShape(kind, grid, open, facts, line));
    }

    private static boolean isSame(SurveyVertex one, SurveyVertex other) {
        return one.north() == other.north() && one.east() == other.east();
    }
}
