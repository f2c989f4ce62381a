package slopewright.exchange.internal.survey;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.messages.Message;

/**
 * KMZ: KML in a ZIP archive. The first file that ends in {@code .kml} is the one that counts, as the format says; pictures beside it are
 * left alone. How large the file is when unpacked is counted while it is read, whatever the archive claims.
 */
public final class KmzSurvey implements SurveyFormat {

    private static final int MOST_BYTES = 64 << 20;
    private static final int MOST_ENTRIES = 10_000;
    private static final int SIGNATURE = 0x504B;

    @Override
    public String name() {
        return "KMZ";
    }

    @Override
    public List<String> endings() {
        return List.of("kmz");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        byte[] kml = document(input).orElseThrow(() -> input.fault(0, Message.of("survey-file.no-kml-inside")));
        new KmlSurvey().read(input.inside(() -> new ByteArrayInputStream(kml)));
    }

    private static Optional<byte[]> document(SurveyInput input) throws IOException, ExchangeException {
        try (InputStream bytes = input.open()) {
            byte[] archive = bytes.readAllBytes();
            if (archive.length < 2 || ((archive[0] & 0xFF) << 8 | archive[1] & 0xFF) != SIGNATURE) {
                throw input.fault(0, Message.of("survey-file.no-zip"));
            }
            try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
                return document(zip, input);
            } catch (ZipException | IllegalArgumentException e) {
                throw input.fault(0, Message.said("survey-file.broken-zip", e));
            }
        }
    }

    private static Optional<byte[]> document(ZipInputStream zip, SurveyInput input) throws IOException, ExchangeException {
        long left = MOST_BYTES;
        int entries = 0;
        for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
            boolean wanted = !entry.isDirectory() && entry.getName().toLowerCase(Locale.ROOT).endsWith(".kml");
            byte[] found = wanted ? zip.readNBytes((int) left + 1) : new byte[0];
            left -= wanted ? found.length : zip.skip(left + 1);
            if (left < 0 || ++entries > MOST_ENTRIES) {
                throw input.fault(0, Message.said("survey-file.zip-size", (MOST_BYTES >> 20), MOST_ENTRIES));
            }
            if (wanted) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }
}
