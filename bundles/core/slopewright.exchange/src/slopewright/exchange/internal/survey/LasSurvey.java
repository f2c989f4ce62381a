package slopewright.exchange.internal.survey;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.exchange.survey.SurveyShape;
import slopewright.exchange.survey.SurveyVertex;
import slopewright.messages.Message;

/**
 * Clouds of points as LAS 1.0 to 1.4 (ASPRS, LAS 1.4 R15). Points of the classes that are chosen are taken, the others counted; withheld
 * ones are none. What the file says of its coordinate reference, by keys or in well-known text, is not overruled. What is packed (LAZ) is
 * refused with the way to unpack it.
 */
public final class LasSurvey implements SurveyFormat {

    private static final int LONGEST_HEAD = 375;
    private static final int RECORD_HEAD = 54;
    private static final int MOST_SAID = 1 << 20;
    private static final String PROJECTION = "LASF_Projection";
    private static final int KEYS = 34735;
    private static final int TEXT = 2112;
    /** Every point is known at its own place; that makes it a matter of a block. */
    private static final Map<SurveyShape.Fact, String> FACTS = Map.of(SurveyShape.Fact.REACH, "0");

    @Override
    public String name() {
        return "LAS cloud of points, not packed";
    }

    @Override
    public List<String> endings() {
        return List.of("las", "laz");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        LasHeader header;
        try (InputStream in = input.openBytes()) {
            header = LasHeader.read(input, in.readNBytes(LONGEST_HEAD));
        }
        if (header.packed()) {
            throw input.fault(0, Message.said("survey-file.las-packed", "pdal translate cloud.laz cloud.las",
                    "laszip -i cloud.laz -o cloud.las"));
        }
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(input.openBytes(), 1 << 16))) {
            in.skipNBytes(header.bytes());
            new Cloud(input, header).read(in);
        } catch (EOFException e) {
            throw input.fault(0, Message.of("survey-file.las-ends"));
        }
    }

    /** The cloud of one file. */
    private static final class Cloud {

        private final SurveyInput input;
        private final LasHeader header;
        private Optional<GeoKeys> keys = Optional.empty();
        private Optional<WellKnownText> text = Optional.empty();
        private boolean degrees;
        private long number;

        Cloud(SurveyInput input, LasHeader header) {
            this.input = input;
            this.header = header;
        }

        private void read(DataInputStream in) throws IOException, ExchangeException {
            long left = header.begin() - header.bytes();
            for (long i = 0; i < header.records(); i++) {
                left -= record(in, left);
            }
            in.skipNBytes(left);
            refer();
            points(in);
        }

        /** Reads one record between header and points, and returns how long it is. */
        private long record(DataInputStream in, long left) throws IOException, ExchangeException {
            ByteBuffer head = ByteBuffer.wrap(in.readNBytes(RECORD_HEAD)).order(ByteOrder.LITTLE_ENDIAN);
            int length = head.limit() < RECORD_HEAD ? 0 : head.getShort(20) & 0xFFFF;
            if (left < RECORD_HEAD + length) {
                throw input.fault(0, Message.said("survey-file.las-record", length));
            }
            byte[] said = in.readNBytes(length);
            String user = new String(head.array(), 2, 16, StandardCharsets.US_ASCII).replaceFirst("\0.*", "");
            int kind = head.getShort(18) & 0xFFFF;
            if (user.equals(PROJECTION) && kind == KEYS) {
                keys = Optional.of(keys(said));
            } else if (user.equals(PROJECTION) && kind == TEXT && length < MOST_SAID) {
                text = Optional.of(new WellKnownText(new String(said, StandardCharsets.UTF_8).replaceFirst("(?s)\0.*", "")));
            }
            return RECORD_HEAD + length;
        }

        private static GeoKeys keys(byte[] said) {
            ByteBuffer in = ByteBuffer.wrap(said).order(ByteOrder.LITTLE_ENDIAN);
            Map<Integer, Integer> found = new HashMap<>();
            for (int i = 8; i + 8 <= said.length; i += 8) {
                if (in.getShort(i + 2) == 0) {
                    found.put(in.getShort(i) & 0xFFFF, in.getShort(i + 6) & 0xFFFF);
                }
            }
            return new GeoKeys(found);
        }

        /** Well-known text goes before keys, as clause 2.4 has it for the formats that want it. */
        private void refer() throws ExchangeException {
            if (text.isPresent()) {
                text.get().refuse(input);
                degrees = text.get().isGeographic();
            } else if (keys.isPresent()) {
                keys.get().refuseUnits(input);
                degrees = keys.get().isGeographic();
                keys.get().refer(input, degrees);
            }
            Optional<String> reference = text.flatMap(WellKnownText::reference);
            if (reference.isPresent()) {
                input.refer(reference.get());
            } else if (!degrees && !(text.isEmpty() && keys.isPresent() && keys.get().namesGrid())) {
                input.refersToNothing();
            }
        }

        private void points(DataInputStream in) throws IOException, ExchangeException {
            byte[] record = new byte[header.length()];
            ByteBuffer point = ByteBuffer.wrap(record).order(ByteOrder.LITTLE_ENDIAN);
            for (number = 1; number <= header.count(); number++) {
                in.readFully(record);
                int kind = header.isWide() ? record[16] & 0xFF : record[15] & 0x1F;
                boolean withheld = (record[15] & (header.isWide() ? 4 : 0x80)) != 0;
                take(kind, withheld, point.getInt(0), point.getInt(4), point.getInt(8));
            }
        }

        private void take(int kind, boolean withheld, int... steps) throws ExchangeException {
            double[] place = new double[steps.length];
            Arrays.setAll(place, axis -> header.coordinate(axis, steps[axis]));
            if (withheld) {
                input.skip(Message.of("survey-file.skip.withheld"));
            } else if (header.isOutside(place)) {
                input.refuse(input.fault(number, Message.of("survey-file.las-box")));
            } else if (!input.takes(kind)) {
                return;
            } else if (degrees && !input.isNear(place[1], place[0])) {
                input.skip(Message.of("survey-file.skip.far-points"));
            } else {
                input.emit(SurveyShape.Kind.POINT, !degrees, List.of(new SurveyVertex(place[1], place[0], place[2])), FACTS, number);
            }
        }
    }
}
