package slopewright.exchange.internal.survey;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.exchange.survey.SurveyShape;
import slopewright.exchange.survey.SurveyVertex;
import slopewright.messages.Message;

/**
 * DXF in its ASCII form: points, lines, polylines with their vertices as release 12 has them, and light ones as later releases have
 * them, in straight pieces, in the grid of the project, metres. A shape is named after its layer and its number there. A polyline that is
 * none in space stands at the elevation of its header, as the format has it. Everything else is skipped and counted. Where the drawing
 * names no unit, that it is taken to be in metres is said.
 */
public final class DxfSurvey implements SurveyFormat {

    private static final int METRES = 6;
    private static final int CLOSED = 1;
    private static final int IN_SPACE = 8;

    @Override
    public String name() {
        return "ASCII DXF in the grid of the project";
    }

    @Override
    public List<String> endings() {
        return List.of("dxf");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        try (BufferedReader text = input.openText(StandardCharsets.ISO_8859_1)) {
            new Pairs(input, text).read();
        }
    }

    /** The pairs of group code and value of one file. */
    private static final class Pairs {
        private final SurveyInput input;
        private final BufferedReader in;
        private final Map<String, Integer> onLayer = new HashMap<>();
        private long line;
        private int code;
        private String value = "";
        private boolean named;

        private Pairs(SurveyInput input, BufferedReader in) {
            this.input = input;
            this.in = in;
        }

        private void read() throws IOException, ExchangeException {
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
                throw input.fault(line, Message.of("survey-file.dxf-entities"));
            }
            if (!named) {
                input.note(Message.of("survey-file.dxf-no-unit"));
            }
        }

        private void units() throws ExchangeException {
            if (code == 70 && !"0".equals(value)) {
                if (whole() != METRES) {
                    throw input.fault(line, Message.said("survey-file.dxf-unit", value));
                }
                named = true;
            }
        }

        /** Reads the next pair of a group code and its value. */
        private void step() throws IOException, ExchangeException {
            String first = in.readLine();
            String second = in.readLine();
            line += 2;
            if (line == 2 && first != null && first.startsWith("AutoCAD Binary DXF")) {
                throw input.fault(1, Message.of("survey-file.dxf-binary"));
            }
            if (first == null || second == null) {
                throw input.fault(line - 1, Message.of("survey-file.dxf-eof"));
            }
            try {
                code = Integer.parseInt(first.strip());
            } catch (NumberFormatException e) {
                throw input.fault(line - 1, Message.said("survey-file.dxf-code", first.strip()));
            }
            value = second.strip();
        }

        private int whole() throws ExchangeException {
            double number = input.number(value, "group " + code, line);
            if (number != Math.rint(number)) {
                throw input.fault(line, Message.said("survey-file.dxf-whole", code, value));
            }
            return (int) number;
        }

        /** What the groups of one entity say; those of a second end are 11, 21, 31. */
        private final class Groups {
            private final double[] first = {Double.NaN, Double.NaN, Double.NaN};
            private final double[] second = {Double.NaN, Double.NaN, Double.NaN};
            private final long at = line;
            private String layer = "";
            private final List<double[]> places = new ArrayList<>();
            private double elevationM = Double.NaN;
            private int flags;
            private int count = -1;
            private boolean arcs;

            private void read() throws IOException, ExchangeException {
                step();
                while (code != 0) {
                    if (code == 8) {
                        layer = value;
                    } else if (code == 70) {
                        flags = whole();
                    } else if (code >= 10 && code <= 31 && code % 10 <= 1) {
                        (code % 10 == 0 ? first : second)[code / 10 - 1] = input.number(value, "group " + code, line);
                        place();
                    } else if (code == 38) {
                        elevationM = input.number(value, "group 38", line);
                    } else if (code == 42) {
                        arcs |= input.number(value, "group 42", line) != 0;
                    } else if (code == 90) {
                        count = whole();
                    }
                    step();
                }
            }

            /** Those of a light polyline follow each other in one entity. */
            private void place() {
                if (code == 10) {
                    places.add(new double[] {first[0], Double.NaN});
                } else if (code == 20 && !places.isEmpty()) {
                    places.get(places.size() - 1)[1] = first[1];
                }
            }

            private SurveyVertex vertex(double[] numbers) throws ExchangeException {
                if (Double.isNaN(numbers[0]) || Double.isNaN(numbers[1])) {
                    throw input.fault(at, Message.of("survey-file.dxf-place"));
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
                case "LWPOLYLINE" -> lightPolyline(groups);
                default -> input.skip(Message.said("survey-file.skip.entities", type));
            }
        }

        private void polyline(Groups header) throws IOException, ExchangeException {
            List<SurveyVertex> vertices = new ArrayList<>();
            while ("VERTEX".equals(value)) {
                Groups vertex = new Groups();
                vertex.read();
                vertices.add(raised(header, vertex));
            }
            if (!"SEQEND".equals(value)) {
                throw input.fault(line, Message.of("survey-file.dxf-seqend"));
            }
            new Groups().read();
            emit((header.flags & CLOSED) != 0 ? SurveyShape.Kind.AREA : SurveyShape.Kind.LINE, vertices, header);
        }

        /** All its vertices are in one entity and stand at one elevation (group 38). */
        private void lightPolyline(Groups groups) throws ExchangeException {
            if (groups.arcs) {
                throw input.fault(groups.at, Message.of("survey-file.dxf-arcs"));
            }
            if (groups.count >= 0 && groups.count != groups.places.size()) {
                throw input.fault(groups.at, Message.said("survey-file.dxf-vertices", groups.count, groups.places.size()));
            }
            List<SurveyVertex> vertices = new ArrayList<>();
            for (double[] place : groups.places) {
                vertices.add(groups.vertex(new double[] {place[0], place[1], groups.elevationM}));
            }
            emit((groups.flags & CLOSED) != 0 ? SurveyShape.Kind.AREA : SurveyShape.Kind.LINE, vertices, groups);
        }

        /** The header has the elevation of a polyline that is none in space; one in space has those of its vertices. */
        private SurveyVertex raised(Groups header, Groups vertex) throws ExchangeException {
            SurveyVertex own = vertex.vertex(vertex.first);
            double elevation = header.first[2];
            if (Double.isNaN(elevation) || elevation == 0 || own.elevationM() == elevation) {
                return own;
            }
            boolean bare = Double.isNaN(own.elevationM()) || own.elevationM() == 0;
            if ((header.flags & IN_SPACE) != 0 || !bare) {
                throw input.fault(vertex.at, Message.said("survey-file.dxf-elevation", own.elevationM(), elevation));
            }
            return new SurveyVertex(own.north(), own.east(), elevation);
        }

        private void emit(SurveyShape.Kind kind, List<SurveyVertex> vertices, Groups groups) throws ExchangeException {
            int number = onLayer.merge(groups.layer, 1, Integer::sum);
            Map<SurveyShape.Fact, String> facts = new EnumMap<>(SurveyShape.Fact.class);
            facts.put(SurveyShape.Fact.NAME, groups.layer.isEmpty() ? String.valueOf(number) : groups.layer + " " + number);
            input.emit(kind, true, vertices, facts, groups.at);
        }
    }
}
