package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.io.InputStream;
import java.nio.BufferUnderflowException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.geometry.Decimals;
import slopewright.messages.Message;
import slopewright.siting.site.SurveyPoints;

/**
 * Terrain as a GeoTIFF (OGC 19-008r4), small or big: one band of elevations in metres, whole or floating point, in strips or tiles, plain
 * or packed by Deflate, LZW or PackBits, with a predictor or without. It must lie north up, and say where by scale and tie point; what its
 * keys say of the coordinate reference is held against that of the import.
 */
public final class GeoTiffSurvey implements SurveyFormat {

    private static final int PIXEL_SCALE = 33550;
    private static final int TIE_POINT = 33922;
    private static final int TRANSFORMATION = 34264;
    private static final int KEYS = 34735;
    private static final int NO_DATA = 42113;
    private static final Set<Long> USUAL_BITS = Set.of(8L, 16L, 32L, 64L);

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
        byte[] bytes;
        try (InputStream in = input.openBytes()) {
            bytes = in.readAllBytes();
        }
        try {
            new Model(input, TiffRaster.open(bytes, SurveyPoints.MOST_POINTS)).read();
        } catch (IllegalArgumentException | IndexOutOfBoundsException | BufferUnderflowException | ArithmeticException e) {
            throw input.fault(0, Message.said("survey-file.no-tiff", e));
        }
    }

    /** One height model. */
    private static final class Model {

        private final SurveyInput input;
        private final TiffRaster raster;
        private final GeoKeys keys;

        Model(SurveyInput input, TiffRaster raster) throws ExchangeException {
            this.input = input;
            this.raster = raster;
            keys = keys(raster.numbers(KEYS));
            keys.refuseUnits(input);
        }

        private static GeoKeys keys(double[] said) {
            Map<Integer, Integer> keys = new HashMap<>();
            for (int i = 4; i + 3 < said.length; i += 4) {
                if (said[i + 1] == 0) {
                    keys.put((int) said[i], (int) said[i + 3]);
                }
            }
            return new GeoKeys(keys);
        }

        private double[] numbers(int tag, int least) throws ExchangeException {
            double[] found = raster.numbers(tag);
            if (found.length < least) {
                throw input.fault(0, Message.said("survey-file.tiff-place", tag));
            }
            for (double number : found) {
                if (!Double.isFinite(number)) {
                    throw input.fault(0, Message.said("survey-file.tiff-tag", number, tag));
                }
            }
            return found;
        }

        private GridCells.Frame frame() throws ExchangeException {
            if (raster.has(TRANSFORMATION)) {
                throw input.fault(0, Message.of("survey-file.tiff-transformed"));
            }
            double[] scale = numbers(PIXEL_SCALE, 2);
            double[] tie = numbers(TIE_POINT, 6);
            if (tie.length != 6) {
                throw input.fault(0, Message.said("survey-file.tiff-tie-points", tie.length / 6));
            }
            double middle = keys.middle();
            return new GridCells.Frame(raster.width(), raster.height(), tie[3] + (middle - tie[0]) * scale[0],
                    tie[4] - (middle - tie[1]) * scale[1], scale[0], scale[1]);
        }

        private OptionalDouble noData() throws ExchangeException {
            Optional<String> text = raster.text(NO_DATA);
            if (text.isEmpty() || text.get().equalsIgnoreCase("nan")) {
                return OptionalDouble.empty();
            }
            try {
                return OptionalDouble.of(Decimals.parse(text.get()));
            } catch (IllegalArgumentException e) {
                throw input.fault(0, Message.said("survey-file.tiff-void", e));
            }
        }

        private void read() throws ExchangeException {
            GridCells cells = new GridCells(input, frame());
            if (raster.bands() != 1) {
                throw input.fault(0, Message.said("survey-file.tiff-bands", raster.bands()));
            }
            if (!USUAL_BITS.contains(raster.bits())) {
                throw input.fault(0, Message.said("survey-file.tiff-bits", raster.bits()));
            }
            keys.refer(input, cells.isDegrees());
            OptionalDouble noData = noData();
            raster.read((y, row) -> {
                for (int x = 0; x < row.length; x++) {
                    if (Double.isNaN(row[x]) || noData.isPresent() && isNone(row[x], noData.getAsDouble())) {
                        cells.isVoid(y, x);
                    } else {
                        cells.take(y, x, row[x], y + 1L);
                    }
                }
            });
            cells.end();
        }

        /** What is written in decimals of a number of single precision is that number. */
        private static boolean isNone(double cell, double noData) {
            return cell == noData || cell == (float) noData && (float) cell == cell;
        }
    }
}
