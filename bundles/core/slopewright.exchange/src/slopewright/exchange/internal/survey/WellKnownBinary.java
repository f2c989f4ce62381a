package slopewright.exchange.internal.survey;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;

import slopewright.exchange.survey.SurveyShape;
import slopewright.exchange.survey.SurveyVertex;
import slopewright.messages.Message;
import slopewright.messages.RefusedException;

/** A geometry in well-known binary (ISO 13249-3), in the plane, in space and measured, as a GeoPackage packs it (clause 2.1.3). */
final class WellKnownBinary {

    private static final int[] ENVELOPE_BYTES = {0, 32, 48, 48, 64};
    private static final int GEOPACKAGE_HEAD = 8;
    private static final int MOST_DEEP = 4;
    private static final int THOUSAND = 1000;

    private final Runnable hole;
    private final ByteBuffer in;
    private final List<Part> parts = new ArrayList<>();

    /** A point, a line or a ring. */
    record Part(SurveyShape.Kind kind, List<SurveyVertex> vertices) {
    }

    private WellKnownBinary(ByteBuffer in, Runnable hole) {
        this.in = in;
        this.hole = hole;
    }

    /**
     * Reads a geometry.
     *
     * @param blob the geometry
     * @param hole is told of each hole of an area
     * @return its parts, none where it is empty
     * @throws IllegalArgumentException where it is none, or of a kind that no survey has; the message says so
     */
    static List<Part> ofGeoPackage(byte[] blob, Runnable hole) {
        int envelope = blob.length < GEOPACKAGE_HEAD ? ENVELOPE_BYTES.length : blob[3] >> 1 & 7;
        if (envelope >= ENVELOPE_BYTES.length || blob[0] != 'G' || blob[1] != 'P' || (blob[3] & 0x20) != 0) {
            throw new RefusedException(Message.of("survey-file.geometry.other"));
        }
        int begin = GEOPACKAGE_HEAD + ENVELOPE_BYTES[envelope];
        if ((blob[3] & 0x10) != 0 || begin > blob.length) {
            return List.of();
        }
        WellKnownBinary geometry = new WellKnownBinary(ByteBuffer.wrap(blob, begin, blob.length - begin), hole);
        try {
            geometry.read(0);
        } catch (BufferUnderflowException e) {
            throw new RefusedException(Message.of("survey-file.geometry.short"));
        }
        if (geometry.in.hasRemaining()) {
            throw new RefusedException(Message.of("survey-file.geometry.goes-on"));
        }
        return geometry.parts;
    }

    private void read(int depth) {
        in.order(in.get() == 0 ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
        int type = in.getInt();
        int dimension = type / THOUSAND;
        if (type < 0 || dimension > 3 || depth > MOST_DEEP) {
            throw refused(type);
        }
        switch (type % THOUSAND) {
            case 1 -> {
                SurveyVertex point = vertex(dimension);
                if (!Double.isNaN(point.north())) {
                    parts.add(new Part(SurveyShape.Kind.POINT, List.of(point)));
                }
            }
            case 2 -> line(SurveyShape.Kind.LINE, dimension);
            case 3 -> {
                int rings = count(4);
                for (int i = 0; i < rings; i++) {
                    int before = parts.size();
                    line(SurveyShape.Kind.AREA, dimension);
                    if (i > 0 && parts.size() > before) {
                        parts.remove(before);
                        hole.run();
                    }
                }
            }
            case 4, 5, 6, 7 -> {
                int members = count(5);
                for (int i = 0; i < members; i++) {
                    read(depth + 1);
                }
            }
            default -> throw refused(type);
        }
    }

    private static IllegalArgumentException refused(int type) {
        return new RefusedException(Message.said("survey-file.geometry.kind", Integer.toUnsignedString(type)));
    }

    /** Reads how many there are, each of so many bytes at least: no room is made for what is only said. */
    private int count(int bytes) {
        int count = in.getInt();
        if (count < 0 || (long) count * bytes > in.remaining()) {
            throw new RefusedException(Message.said("survey-file.geometry.parts", Integer.toUnsignedString(count)));
        }
        return count;
    }

    private void line(SurveyShape.Kind kind, int dimension) {
        int count = count(16);
        List<SurveyVertex> vertices = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            SurveyVertex vertex = vertex(dimension);
            if (Double.isNaN(vertex.north())) {
                throw new RefusedException(Message.of("survey-file.geometry.no-number"));
            }
            vertices.add(vertex);
        }
        if (!vertices.isEmpty()) {
            parts.add(new Part(kind, vertices));
        }
    }

    /** Reads a position; it is no number throughout where a point is empty. */
    private SurveyVertex vertex(int dimension) {
        double east = in.getDouble();
        double north = in.getDouble();
        double up = dimension == 1 || dimension == 3 ? in.getDouble() : Double.NaN;
        if (dimension >= 2) {
            in.getDouble();
        }
        if (Double.isNaN(east) != Double.isNaN(north) || Double.isInfinite(east) || Double.isInfinite(north) || Double.isInfinite(up)) {
            throw new RefusedException(Message.said("survey-file.position", east, north, up));
        }
        return new SurveyVertex(north, east, up);
    }
}
