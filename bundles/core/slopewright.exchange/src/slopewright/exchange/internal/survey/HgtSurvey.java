package slopewright.exchange.internal.survey;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.messages.Message;

/**
 * A tile of the height model of the shuttle mission (SRTM): one degree by one degree in 1201 or 3601 rows of as many elevations, whole
 * metres in two bytes with the high one first, from the north-western corner on; the name of the file says where its south-western corner
 * lies ({@code N47W012.hgt}). The places of the first and the last row and column lie on the edges of the tile. Source: the description of
 * the format by the United States Geological Survey, "SRTM Topography".
 */
public final class HgtSurvey implements SurveyFormat {

    private static final Pattern NAME = Pattern.compile("([NS])(\\d{2})([EW])(\\d{3})", Pattern.CASE_INSENSITIVE);
    private static final List<Integer> SIZES = List.of(1201, 3601);
    private static final int VOID = -32768;

    @Override
    public String name() {
        return "SRTM tile";
    }

    @Override
    public List<String> endings() {
        return List.of("hgt");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        Matcher name = NAME.matcher(input.stem());
        if (!name.matches()) {
            throw input.fault(0, Message.of("survey-file.hgt-name"));
        }
        int south = Integer.parseInt(name.group(2)) * (name.group(1).equalsIgnoreCase("N") ? 1 : -1);
        int west = Integer.parseInt(name.group(4)) * (name.group(3).equalsIgnoreCase("E") ? 1 : -1);
        long bytes = input.size();
        int size = SIZES.stream().filter(each -> 2L * each * each == bytes).findFirst()
                .orElseThrow(() -> input.fault(0, Message.said("survey-file.hgt-bytes", bytes)));
        GridCells cells = new GridCells(input, new GridCells.Frame(size, size, west, south + 1.0, 1.0 / (size - 1), 1.0 / (size - 1)));
        try (InputStream raw = input.openBytes(); DataInputStream in = new DataInputStream(new BufferedInputStream(raw))) {
            for (int row = 0; row < size; row++) {
                for (int column = 0; column < size; column++) {
                    int elevationM = in.readShort();
                    if (elevationM == VOID) {
                        cells.isVoid(row, column);
                    } else {
                        cells.take(row, column, elevationM, row + 1L);
                    }
                }
            }
        }
        cells.end();
    }
}
