package slopewright.exchange.internal.survey;

import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.exchange.survey.SurveyShape;
import slopewright.exchange.survey.SurveyVertex;
import slopewright.messages.Message;

/**
 * ESRI shapefile, after the technical description of July 1998: points, lines and polygons of {@code .shp}, in the plane and in space, with
 * what {@code .dbf} says of each. {@code .prj} must lie beside it and name longitude and latitude on WGS 84, or metres of a grid: what the
 * coordinates are is not guessed.
 */
public final class ShapefileSurvey implements SurveyFormat {

    private static final int FILE_CODE = 9994;
    private static final int VERSION = 1000;
    private static final int HEAD_BYTES = 100;
    private static final int BOX_BYTES = 32;
    private static final int POINT_BYTES = 16;
    private static final int MOST_RECORD_BYTES = 64 << 20;
    private static final int MOST_PRJ_BYTES = 1 << 16;
    private static final String METRES = "(?s).*UNIT\\[\"(Metre|Meter|metre|meter)\",1(\\.0*)?[,\\]].*";

    @Override
    public String name() {
        return "ESRI shapefile";
    }

    @Override
    public List<String> endings() {
        return List.of("shp");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        boolean grid = isGrid(input);
        try (DbaseTable table = DbaseTable.open(beside(input, "dbf"), input.besideIt("cpg"));
                DataInputStream in = new DataInputStream(input.open())) {
            new Records(input, grid, table, in).read();
        } catch (EOFException e) {
            throw input.fault(0, Message.of("survey-file.shape-ends"));
        }
    }

    private static SurveyInput beside(SurveyInput input, String ending) throws ExchangeException {
        return input.besideIt(ending).orElseThrow(() -> input.fault(0, Message.said("survey-file.no-beside", "." + ending)));
    }

    private static boolean isGrid(SurveyInput input) throws IOException, ExchangeException {
        SurveyInput beside = beside(input, "prj");
        String text;
        try (InputStream in = beside.open()) {
            text = new String(in.readNBytes(MOST_PRJ_BYTES), StandardCharsets.UTF_8).strip();
        }
        if (text.startsWith("GEOGCS[") && text.contains("WGS_1984") || text.startsWith("GEOGCRS[") && text.contains("WGS 84")) {
            new WellKnownText(text).refuseUnits(beside);
            return false;
        }
        if (text.startsWith("PROJCS[") && text.matches(METRES)) {
            new WellKnownText(text).refuseUnits(beside);
            return true;
        }
        throw beside.fault(1, Message.said("survey-file.no-reference", text.substring(0, Math.min(60, text.length()))));
    }

    /** The records of one file. */
    private static final class Records {
        private final SurveyInput input;
        private final boolean grid;
        private final DbaseTable table;
        private final DataInputStream in;
        private long number;

        private Records(SurveyInput input, boolean grid, DbaseTable table, DataInputStream in) {
            this.input = input;
            this.grid = grid;
            this.table = table;
            this.in = in;
        }

        private void read() throws IOException, ExchangeException {
            ByteBuffer head = ByteBuffer.wrap(in.readNBytes(HEAD_BYTES));
            if (head.remaining() < HEAD_BYTES || head.getInt(0) != FILE_CODE || head.order(ByteOrder.LITTLE_ENDIAN).getInt(28) != VERSION) {
                throw input.fault(0, Message.of("survey-file.no-shapefile"));
            }
            long left = 2L * head.order(ByteOrder.BIG_ENDIAN).getInt(24) - HEAD_BYTES;
            while (left > 0) {
                number++;
                in.readInt();
                long bytes = 2L * in.readInt();
                left -= bytes + 8;
                if (bytes < 4 || bytes > MOST_RECORD_BYTES || left < 0) {
                    throw input.fault(number, Message.said("survey-file.shape-record", bytes));
                }
                byte[] content = new byte[(int) bytes];
                in.readFully(content);
                try {
                    record(ByteBuffer.wrap(content).order(ByteOrder.LITTLE_ENDIAN));
                } catch (BufferUnderflowException e) {
                    throw tooShort();
                }
            }
            if (in.read() >= 0) {
                throw input.fault(number, Message.of("survey-file.shape-goes-on"));
            }
            if (table.hasMore()) {
                throw input.fault(0, Message.said("survey-file.shape-rows", number));
            }
        }

        private void record(ByteBuffer record) throws IOException, ExchangeException {
            Map<SurveyShape.Fact, String> facts = table.next(number);
            int type = record.getInt();
            boolean inSpace = type > 10 && type < 20;
            switch (type) {
                case 0 -> input.skip(Message.of("survey-file.skip.placeless-shapes"));
                case 1, 11, 21 -> {
                    double[] xy = {record.getDouble(), record.getDouble()};
                    emit(SurveyShape.Kind.POINT, List.of(vertex(xy[0], xy[1], inSpace ? record.getDouble() : Double.NaN)), facts);
                }
                case 8, 18, 28 -> several(points(record, 0, inSpace).stream().map(List::of).toList(), SurveyShape.Kind.POINT, facts);
                case 3, 13, 23 -> several(parts(record, inSpace), SurveyShape.Kind.LINE, facts);
                case 5, 15, 25 -> several(outer(parts(record, inSpace)), SurveyShape.Kind.AREA, facts);
                default -> throw input.fault(number, Message.said("survey-file.shape-type", type));
            }
        }

        private ExchangeException tooShort() {
            return input.fault(number, Message.of("survey-file.shape-short"));
        }

        private void several(List<List<SurveyVertex>> parts, SurveyShape.Kind kind, Map<SurveyShape.Fact, String> facts)
                throws ExchangeException {
            if (parts.isEmpty()) {
                input.skip(Message.of("survey-file.skip.placeless-shapes"));
            }
            for (int i = 0; i < parts.size(); i++) {
                emit(kind, parts.get(i), parts.size() == 1 ? facts : SurveyInput.numbered(facts, i + 1));
            }
        }

        private void emit(SurveyShape.Kind kind, List<SurveyVertex> vertices, Map<SurveyShape.Fact, String> facts)
                throws ExchangeException {
            input.emit(kind, grid, vertices, facts, number);
        }

        private SurveyVertex vertex(double x, double y, double z) throws ExchangeException {
            if (!Double.isFinite(x) || !Double.isFinite(y) || Double.isInfinite(z)) {
                throw input.fault(number, Message.said("survey-file.position", x, y, z));
            }
            return new SurveyVertex(y, x, z);
        }

        /** Reads points that follow the box around them; those of a shape with parts follow the list of these. */
        private List<SurveyVertex> points(ByteBuffer record, int parts, boolean inSpace) throws ExchangeException {
            int first = 4 + BOX_BYTES + (parts == 0 ? 4 : 8 + 4 * parts);
            if (record.limit() < first) {
                throw tooShort();
            }
            int count = record.getInt(4 + BOX_BYTES + (parts == 0 ? 0 : 4));
            record.position(first);
            if (count < 0 || (long) count * POINT_BYTES > record.remaining()) {
                throw input.fault(number, Message.said("survey-file.shape-positions", count));
            }
            int heights = record.position() + count * POINT_BYTES + POINT_BYTES;
            if (inSpace && heights + 8L * count > record.limit()) {
                throw input.fault(number, Message.of("survey-file.shape-space"));
            }
            List<SurveyVertex> found = new ArrayList<>(count);
            for (int i = 0; i < count; i++) {
                double x = record.getDouble();
                double y = record.getDouble();
                found.add(vertex(x, y, inSpace ? record.getDouble(heights + 8 * i) : Double.NaN));
            }
            return found;
        }

        private List<List<SurveyVertex>> parts(ByteBuffer record, boolean inSpace) throws ExchangeException {
            if (record.limit() < 4 + BOX_BYTES + 8) {
                throw tooShort();
            }
            int count = record.getInt(4 + BOX_BYTES);
            if (count < 1 || 4L * count > record.remaining()) {
                throw input.fault(number, Message.said("survey-file.shape-parts", count));
            }
            List<SurveyVertex> all = points(record, count, inSpace);
            List<List<SurveyVertex>> parts = new ArrayList<>();
            int begin = record.getInt(4 + BOX_BYTES + 8);
            for (int i = 1; i <= count; i++) {
                int end = i < count ? record.getInt(4 + BOX_BYTES + 8 + 4 * i) : all.size();
                if (begin < 0 || end <= begin || end > all.size() || i == 1 && begin != 0) {
                    throw input.fault(number, Message.of("survey-file.shape-order"));
                }
                parts.add(all.subList(begin, end));
                begin = end;
            }
            return parts;
        }

        /** An outline runs clockwise, a hole the other way; holes are taken as filled, which is on the safe side. */
        private List<List<SurveyVertex>> outer(List<List<SurveyVertex>> rings) {
            List<List<SurveyVertex>> found = rings.size() == 1 ? rings : rings.stream().filter(ring -> area(ring) <= 0).toList();
            for (int i = found.size(); i < rings.size() && !found.isEmpty(); i++) {
                input.skip(Message.of("survey-file.skip.polygon-holes"));
            }
            return found.isEmpty() ? rings : found;
        }

        /** Returns twice the area of a ring, below zero where it runs clockwise. */
        private static double area(List<SurveyVertex> ring) {
            double sum = 0;
            SurveyVertex origin = ring.get(0);
            for (int i = 1; i < ring.size(); i++) {
                SurveyVertex from = ring.get(i - 1);
                SurveyVertex to = ring.get(i);
                sum += (from.east() - origin.east()) * (to.north() - origin.north())
                        - (to.east() - origin.east()) * (from.north() - origin.north());
            }
            return sum;
        }
    }
}
