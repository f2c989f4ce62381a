package slopewright.exchange.internal.survey;

import java.awt.image.Raster;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.geometry.Decimals;
import slopewright.siting.site.SurveyPoints;

/**
 * Terrain as a GeoTIFF (OGC 19-008r4): one band of elevations in metres, whole or floating point, in strips or tiles, plain or compressed
 * as the reader of this Java knows it (Deflate, LZW, PackBits). It must lie north up, and say where by scale and tie point; what its keys
 * say of the coordinate reference is held against that of the import.
 */
public final class GeoTiffSurvey implements SurveyFormat {

    private static final int PREDICTOR = 317;
    private static final int PIXEL_SCALE = 33550;
    private static final int TIE_POINT = 33922;
    private static final int TRANSFORMATION = 34264;
    private static final int KEYS = 34735;
    private static final int NO_DATA = 42113;
    private static final int FLOATING_PREDICTOR = 3;
    private static final int BITS = 258;
    private static final Set<Long> USUAL_BITS = Set.of(8L, 16L, 32L, 64L);
    private static final int SAMPLES = 277;
    private static final List<Integer> BLOCK_BYTES = List.of(279, 325);
    private static final int TILE_WIDTH = 322;
    private static final int TILE_LENGTH = 323;
    private static final long MOST_BYTES = 8L * SurveyPoints.MOST_POINTS;

    @Override
    public String name() {
        return "GeoTIFF of elevations";
    }

    @Override
    public List<String> endings() {
        return List.of("tif", "tiff");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        ImageReader reader = ImageIO.getImageReadersByFormatName("tiff").next();
        try (InputStream raw = new BufferedInputStream(input.openBytes()); ImageInputStream in = new MemoryCacheImageInputStream(raw)) {
            reader.setInput(in, false, false);
            new Model(input, reader).read();
        } catch (ArithmeticException | IllegalArgumentException | IndexOutOfBoundsException | NegativeArraySizeException
                | IllegalStateException e) {
            throw input.fault(0, "is no TIFF that can be read: " + e.getMessage());
        } finally {
            reader.dispose();
        }
    }

    /** One height model. */
    private static final class Model {

        private final SurveyInput input;
        private final ImageReader reader;
        private final TIFFDirectory tags;
        private final GeoKeys keys;

        Model(SurveyInput input, ImageReader reader) throws ExchangeException {
            this.input = input;
            this.reader = reader;
            try {
                IIOMetadata metadata = reader.getImageMetadata(0);
                tags = TIFFDirectory.createFromMetadata(metadata);
            } catch (IOException | RuntimeException e) {
                throw input.fault(0, "is no TIFF that can be read: " + e.getMessage());
            }
            keys = keys(tags.getTIFFField(KEYS));
            keys.refuseUnits(input);
        }

        private static GeoKeys keys(TIFFField field) {
            Map<Integer, Integer> keys = new HashMap<>();
            for (int i = 4; field != null && i + 3 < field.getCount(); i += 4) {
                if (field.getAsInt(i + 1) == 0) {
                    keys.put(field.getAsInt(i), field.getAsInt(i + 3));
                }
            }
            return new GeoKeys(keys);
        }

        private double[] numbers(int tag, int least) throws ExchangeException {
            TIFFField field = tags.getTIFFField(tag);
            if (field == null || field.getCount() < least) {
                throw input.fault(0, "does not say where it lies: the tag " + tag + " is missing or too short");
            }
            double[] found = new double[field.getCount()];
            for (int i = 0; i < found.length; i++) {
                found[i] = field.getAsDouble(i);
                if (!Double.isFinite(found[i])) {
                    throw input.fault(0, "has " + found[i] + " in the tag " + tag);
                }
            }
            return found;
        }

        private GridCells.Frame frame() throws IOException, ExchangeException {
            if (tags.getTIFFField(TRANSFORMATION) != null) {
                throw input.fault(0, "lies by a transformation, perhaps turned; warp it to north up");
            }
            double[] scale = numbers(PIXEL_SCALE, 2);
            double[] tie = numbers(TIE_POINT, 6);
            if (tie.length != 6) {
                throw input.fault(0, "lies by " + tie.length / 6 + " tie points; warp it to north up");
            }
            double middle = keys.middle();
            return new GridCells.Frame(reader.getWidth(0), reader.getHeight(0), tie[3] + (middle - tie[0]) * scale[0],
                    tie[4] - (middle - tie[1]) * scale[1], scale[0], scale[1]);
        }

        private Optional<Double> noData() throws ExchangeException {
            TIFFField field = tags.getTIFFField(NO_DATA);
            if (field == null) {
                return Optional.empty();
            }
            String text = field.getAsString(0).replace("\0", "").strip();
            if (text.equalsIgnoreCase("nan")) {
                return Optional.of(Double.NaN);
            }
            try {
                return Optional.of(Decimals.parse(text));
            } catch (IllegalArgumentException e) {
                throw input.fault(0, "names as the elevation that is none " + e.getMessage());
            }
        }

        /** Room for a strip or a tile is made before it is read: none needs more than all cells that are taken. */
        private void refuseHuge() throws ExchangeException {
            if (!USUAL_BITS.contains(first(BITS))) {
                throw input.fault(0, "has elevations of " + first(BITS) + " bits, where 8, 16, 32 or 64 are read");
            }
            for (int tag : BLOCK_BYTES) {
                TIFFField field = tags.getTIFFField(tag);
                for (int i = 0; field != null && i < field.getCount(); i++) {
                    refuseHuge(field.getAsLong(i));
                }
            }
            refuseHuge(Math.multiplyExact(Math.multiplyExact(8L * first(SAMPLES), first(TILE_WIDTH)), first(TILE_LENGTH)));
        }

        private void refuseHuge(long bytes) throws ExchangeException {
            if (bytes < 0 || bytes > MOST_BYTES) {
                throw input.fault(0, "has a block of " + bytes + " bytes, where at most " + MOST_BYTES + " are taken");
            }
        }

        private long first(int tag) {
            TIFFField field = tags.getTIFFField(tag);
            return field == null || field.getCount() == 0 ? 1 : field.getAsLong(0);
        }

        private void read() throws IOException, ExchangeException {
            TIFFField predictor = tags.getTIFFField(PREDICTOR);
            if (predictor != null && predictor.getAsInt(0) == FLOATING_PREDICTOR) {
                throw input.fault(0, "is compressed with the predictor for floating point, which is not read; write it with PREDICTOR=1");
            }
            GridCells cells = new GridCells(input, frame());
            refuseHuge();
            keys.refer(input, cells.isDegrees());
            Optional<Double> noData = noData();
            Raster raster;
            try {
                raster = reader.read(0).getRaster();
            } catch (IOException | RuntimeException e) {
                throw input.fault(0, "cannot be read: " + e.getMessage());
            }
            if (raster.getNumBands() != 1) {
                throw input.fault(0, "has " + raster.getNumBands() + " bands, where one of elevations is needed");
            }
            double[] row = new double[raster.getWidth()];
            for (int y = 0; y < raster.getHeight(); y++) {
                raster.getSamples(0, y, row.length, 1, 0, row);
                for (int x = 0; x < row.length; x++) {
                    if (Double.isNaN(row[x]) || noData.isPresent() && row[x] == noData.get()) {
                        cells.isVoid(y, x);
                    } else {
                        cells.take(y, x, row[x], y + 1L);
                    }
                }
            }
            cells.end();
        }
    }
}
