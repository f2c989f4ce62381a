package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.internal.FastDecimals;
import slopewright.exchange.survey.PointColumns;
import slopewright.exchange.survey.SurveyInput;
import slopewright.exchange.survey.SurveyShape;
import slopewright.siting.site.PackedIds;
import slopewright.siting.site.SurveyPoints;

/**
 * A table of points in degrees and nothing else, read from its bytes without an object for a row. Whatever is not as plain as that, a
 * quoted field, a line, a fault, makes the whole of it no matter for this class: {@link TableRows} reads it and says what is wrong.
 */
final class PlainPointRows {

    private static final int BLOCK_BYTES = 1 << 20;
    private static final int FIRST = 1 << 12;

    /** What a column is to this class. */
    private enum Role {
        NORTH, EAST, TOP, HORIZONTAL, VERTICAL, ID, NAME, NONE
    }

    /** Ends the reading of a table that is not plain. */
    private static final class NotPlain extends Exception {
        private static final long serialVersionUID = 1L;

        NotPlain() {
            super("not plain", null, false, false);
        }
    }

    private final SurveyInput input;
    private final double[][] numbers = new double[Role.VERTICAL.ordinal() + 1][];
    private final PackedIds.Builder ids = new PackedIds.Builder();
    private List<String> header = List.of();
    private Role[] roles = {};
    private int[] ends = {};
    private boolean named;
    private int count;
    private int capacity;

    private PlainPointRows(SurveyInput input) {
        this.input = input;
    }

    /**
     * Reads a table and hands it on.
     *
     * @return the header where the points are taken; empty where the table is to be read row by row
     */
    static Optional<List<String>> read(SurveyInput input) throws IOException, ExchangeException {
        PlainPointRows rows = new PlainPointRows(input);
        try (InputStream in = input.open()) {
            rows.readAll(in);
        } catch (NotPlain e) {
            return Optional.empty();
        }
        return rows.count > 0 && input.takes(rows.columns()) ? Optional.of(rows.header) : Optional.empty();
    }

    private PointColumns columns() {
        return new PointColumns(count, numbers[0], numbers[1], numbers[2], Optional.ofNullable(numbers[3]),
                Optional.ofNullable(numbers[4]), named ? Optional.of(ids.build()) : Optional.empty());
    }

    private boolean has(Role role) {
        return List.of(roles).contains(role);
    }

    private void readAll(InputStream in) throws IOException, NotPlain {
        byte[] text = new byte[BLOCK_BYTES];
        int filled = 0;
        boolean end = false;
        while (!end) {
            int got = in.readNBytes(text, filled, BLOCK_BYTES - filled);
            end = got < BLOCK_BYTES - filled;
            filled += got;
            int from = 0;
            for (int at = 0; at < filled; at++) {
                if (text[at] == '\n') {
                    line(text, from, at);
                    from = at + 1;
                }
            }
            if (end) {
                line(text, from, filled);
            } else if (from == 0) {
                throw new NotPlain();
            }
            System.arraycopy(text, from, text, 0, filled - from);
            filled -= from;
        }
    }

    private void line(byte[] text, int from, int lineEnd) throws NotPlain {
        int to = lineEnd > from && text[lineEnd - 1] == '\r' ? lineEnd - 1 : lineEnd;
        if (to == from) {
            return;
        }
        boolean ascii = isAscii(text, from, to);
        if (header.isEmpty()) {
            header(decoded(text, from, to));
        } else {
            row(text, from, to, ascii);
        }
    }

    /** Returns whether a line holds no letter but those of ASCII; whatever could mean more than itself is not plain. */
    private static boolean isAscii(byte[] text, int from, int to) throws NotPlain {
        boolean ascii = true;
        for (int at = from; at < to; at++) {
            byte letter = text[at];
            if (letter < ' ') {
                if (letter >= 0) {
                    throw new NotPlain();
                }
                ascii = false;
            } else if (letter == '"' || letter == 0x7F) {
                throw new NotPlain();
            }
        }
        return ascii;
    }

    private static String decoded(byte[] text, int from, int to) throws NotPlain {
        try {
            String line = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(text, from, to - from)).toString();
            if (line.chars().anyMatch(Character::isISOControl)) {
                throw new NotPlain();
            }
            return line;
        } catch (CharacterCodingException e) {
            throw new NotPlain();
        }
    }

    private void header(String line) throws NotPlain {
        header = List.of(line.split(",", -1));
        roles = new Role[header.size()];
        ends = new int[header.size()];
        boolean tops = false;
        for (int i = 0; i < roles.length; i++) {
            String key = input.column(header.get(i).strip());
            Optional<SurveyShape.Fact> fact = SurveyInput.fact(key);
            roles[i] = fact.isPresent() ? role(fact.get()) : switch (key) {
                case "latitudedeg" -> Role.NORTH;
                case "longitudedeg" -> Role.EAST;
                case "northm", "eastm", "shape" -> throw new NotPlain();
                default -> Role.NONE;
            };
            tops |= roles[i] == Role.TOP;
        }
        for (Role role : Role.values()) {
            if (role != Role.NONE && IntStream.range(0, roles.length).filter(i -> roles[i] == role).count() > 1) {
                throw new NotPlain();
            }
        }
        named = has(Role.ID) || has(Role.NAME);
        long keys = header.stream().map(name -> input.column(name.strip())).filter(key -> !key.isEmpty()).distinct().count();
        if (keys < header.size() || !tops || !has(Role.NORTH) || !has(Role.EAST)) {
            throw new NotPlain();
        }
    }

    /** Of a block nobody keeps source and day of a point; what else is said of its height is weighed elsewhere. */
    private static Role role(SurveyShape.Fact fact) throws NotPlain {
        return switch (fact) {
            case ID -> Role.ID;
            case NAME -> Role.NAME;
            case TOP_ELEVATION, ELEVATION -> Role.TOP;
            case HORIZONTAL_ACCURACY -> Role.HORIZONTAL;
            case VERTICAL_ACCURACY -> Role.VERTICAL;
            case SOURCE, DATE -> Role.NONE;
            default -> throw new NotPlain();
        };
    }

    private void row(byte[] text, int from, int to, boolean ascii) throws NotPlain {
        if (!ascii) {
            decoded(text, from, to);
        }
        int field = 0;
        for (int at = from; at <= to; at++) {
            if (at == to || text[at] == ',') {
                if (field == ends.length) {
                    throw new NotPlain();
                }
                ends[field++] = at;
            }
        }
        if (field < ends.length || count == SurveyPoints.MOST_POINTS) {
            throw new NotPlain();
        }
        if (count == capacity) {
            grow();
        }
        int idFrom = from;
        int idTo = from;
        int begin = from;
        for (int i = 0; i < ends.length; i++) {
            Role role = roles[i];
            if (role.ordinal() <= Role.VERTICAL.ordinal()) {
                numbers[role.ordinal()][count] = number(text, begin, ends[i], role);
            } else if (role == Role.ID || role == Role.NAME && idFrom == idTo) {
                if (begin < ends[i]) {
                    idFrom = begin;
                    idTo = ends[i];
                }
            }
            begin = ends[i] + 1;
        }
        id(text, idFrom, idTo, ascii);
        count++;
    }

    private void id(byte[] text, int from, int to, boolean ascii) throws NotPlain {
        boolean spaced = from < to && (text[from] == ' ' || text[to - 1] == ' ');
        if (spaced || to - from > PackedIds.MOST_BYTES) {
            throw new NotPlain();
        }
        if (!ascii) {
            String id = decoded(text, from, to);
            if (!id.equals(id.strip())) {
                throw new NotPlain();
            }
        }
        if (named) {
            ids.add(text, from, to);
        }
    }

    private static double number(byte[] text, int from, int to, Role role) throws NotPlain {
        boolean accuracy = role == Role.HORIZONTAL || role == Role.VERTICAL;
        if (from == to && accuracy) {
            return Double.NaN;
        }
        double number = FastDecimals.parse(text, from, to);
        boolean fit = switch (role) {
            case NORTH -> Math.abs(number) <= 90;
            case EAST -> Math.abs(number) <= 180;
            case HORIZONTAL, VERTICAL -> number >= 0;
            default -> !Double.isNaN(number);
        };
        if (!fit) {
            throw new NotPlain();
        }
        return number;
    }

    private void grow() {
        capacity = Math.max(FIRST, 2 * capacity);
        for (Role role : roles) {
            if (role.ordinal() <= Role.VERTICAL.ordinal()) {
                double[] old = numbers[role.ordinal()];
                numbers[role.ordinal()] = old == null ? new double[capacity] : Arrays.copyOf(old, capacity);
            }
        }
    }
}
