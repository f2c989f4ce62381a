package slopewright.exchange.survey;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import slopewright.exchange.ExchangeException;

/**
 * DXF in its ASCII form, as release 12 has it: points, lines, and polylines with their vertices, in the grid of the project, metres. A
 * shape is named after its layer and its number there. Everything else is passed over and counted.
 */
final class DxfSurvey extends SurveyReader {

    private static final int METRES = 6;

    private final Map<String, Integer> onLayer = new HashMap<>();
    private BufferedReader in;
    private long line;
    private int code;
    private String value = "";

    DxfSurvey(Path file, SurveyFile.Sink sink) {
        super(file, sink);
    }

    @Override
    void read() throws IOException, ExchangeException {
        try (BufferedReader text = Files.newBufferedReader(file(), StandardCharsets.ISO_8859_1)) {
            in = text;
            boolean ended = false;
            String section = "";
            boolean found = false;
            step();
            while (!ended) {
                if (code == 0 && "SECTION".equals(value)) {
                    step();
                    section = code == 2 ? value : "";
                    found |= "ENTITIES".equals(section);
                    step();
                } else if (code == 0 && "EOF".equals(value)) {
                    ended = true;
                } else if (code == 9 && "$INSUNITS".equals(value)) {
                    step();
                    units();
                } else if (code == 0 && "ENTITIES".equals(section) && !"ENDSEC".equals(value)) {
                    entity();
                } else {
                    step();
                }
            }
            if (!found) {
                throw fault(line, "holds no section ENTITIES");
            }
        }
    }

    private void units() throws ExchangeException {
        if (code == 70 && !"0".equals(value) && whole() != METRES) {
            throw fault(line, "the drawing unit ($INSUNITS) is " + value + "; 6, metres, is needed");
        }
    }

    /** Reads the next pair of a group code and its value. */
    private void step() throws IOException, ExchangeException {
        String first = in.readLine();
        String second = in.readLine();
        line += 2;
        if (line == 2 && first != null && first.startsWith("AutoCAD Binary DXF")) {
            throw fault(1, "is a binary DXF; write it as ASCII");
        }
        if (first == null || second == null) {
            throw fault(line - 1, "ends before EOF");
        }
        try {
            code = Integer.parseInt(first.strip());
        } catch (NumberFormatException e) {
            throw fault(line - 1, "'" + first.strip() + "' is no group code");
        }
        value = second.strip();
    }

    private int whole() throws ExchangeException {
        double number = number(value, "group " + code, line);
        if (number != Math.rint(number)) {
            throw fault(line, "group " + code + ": '" + value + "' is no whole number");
        }
        return (int) number;
    }

    /** What the groups of one entity say; those of a second end are 11, 21, 31. */
    private final class Groups {
        private final double[] first = {Double.NaN, Double.NaN, Double.NaN};
        private final double[] second = {Double.NaN, Double.NaN, Double.NaN};
        private String layer = "";
        private int flags;
        private final long at = line;

        private void read() throws IOException, ExchangeException {
            step();
            while (code != 0) {
                if (code == 8) {
                    layer = value;
                } else if (code == 70) {
                    flags = whole();
                } else if (code >= 10 && code <= 31 && code % 10 <= 1) {
                    (code % 10 == 0 ? first : second)[code / 10 - 1] = number(value, "group " + code, line);
                }
                step();
            }
        }

        private SurveyVertex vertex(double[] numbers) throws ExchangeException {
            if (Double.isNaN(numbers[0]) || Double.isNaN(numbers[1])) {
                throw fault(at, "an entity has no east or no north (groups 10 and 20)");
            }
            return new SurveyVertex(numbers[1], numbers[0], numbers[2]);
        }
    }

    private void entity() throws IOException, ExchangeException {
        String type = value;
        Groups groups = new Groups();
        groups.read();
        switch (type) {
            case "POINT" -> emit(SurveyShape.Kind.POINT, List.of(groups.vertex(groups.first)), groups);
            case "LINE" -> emit(SurveyShape.Kind.LINE, List.of(groups.vertex(groups.first), groups.vertex(groups.second)), groups);
            case "POLYLINE" -> polyline(groups);
            default -> passOver("entities " + type);
        }
    }

    private void polyline(Groups groups) throws IOException, ExchangeException {
        List<SurveyVertex> vertices = new ArrayList<>();
        while ("VERTEX".equals(value)) {
            Groups vertex = new Groups();
            vertex.read();
            vertices.add(vertex.vertex(vertex.first));
        }
        if (!"SEQEND".equals(value)) {
            throw fault(line, "a POLYLINE is not ended by SEQEND");
        }
        new Groups().read();
        emit((groups.flags & 1) == 1 ? SurveyShape.Kind.AREA : SurveyShape.Kind.LINE, vertices, groups);
    }

    private void emit(SurveyShape.Kind kind, List<SurveyVertex> vertices, Groups groups) throws ExchangeException {
        int number = onLayer.merge(groups.layer, 1, Integer::sum);
        Map<SurveyShape.Fact, String> facts = new EnumMap<>(SurveyShape.Fact.class);
        facts.put(SurveyShape.Fact.NAME, groups.layer.isEmpty() ? String.valueOf(number) : groups.layer + " " + number);
        emit(kind, true, vertices, facts, groups.at);
    }
}
