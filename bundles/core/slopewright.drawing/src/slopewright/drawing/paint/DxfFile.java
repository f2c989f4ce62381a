package slopewright.drawing.paint;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import slopewright.messages.Printable;

/**
 * Puts a drawing exchange file of release 2007 together: UTF-8, every object with a handle and an owner, model space in metres, one layout
 * of paper in millimetres. What is drawn comes from {@link DxfPainter}; here are the tables, blocks and objects that every reader relies
 * on.
 */
final class DxfFile {

    /** Block of a light unit: its box at true size about the lens. */
    static final String UNIT_BLOCK = "LIGHT_UNIT";
    /** Text and dimension style. */
    static final String STYLE = "SLOPEWRIGHT";
    /** The tags of the attributes of a unit. */
    private static final List<String> TAGS = List.of("AID", "UNIT", "SETTING", "ELEVATION");

    private static final String MODEL = "1F";
    private static final String PAPER = "1B";
    private static final String MODEL_LAYOUT = "22";
    private static final String PAPER_LAYOUT = "1E";
    private static final double UNIT_HALF_M = 0.4;

    private final Map<String, Integer> layers = new LinkedHashMap<>();
    private final StringBuilder model = new StringBuilder();
    private final StringBuilder paper = new StringBuilder();
    private final StringBuilder records = new StringBuilder();
    private final StringBuilder blocks = new StringBuilder();
    private final double unitsPerMm;
    private int handle = 0x100;
    private int dimensions;
    private StringBuilder out = model;

    /** Starts a file; letters and dashes of dimensions have the size of paper in the units of the model. */
    DxfFile(double unitsPerMm) {
        this.unitsPerMm = unitsPerMm;
        layers.put("0", 7);
        unitBlock();
    }

    /** Writes what follows into the layout of paper. */
    void onPaper() {
        out = paper;
    }

    /** Begins an entity on a layer; a colour of its own where it is not negative. */
    DxfFile entity(String type, String layer, int layerColour, int own) {
        layers.putIfAbsent(layer, layerColour);
        pair(0, type).pair(5, next()).pair(330, out == paper ? PAPER : MODEL).pair(100, "AcDbEntity");
        if (out == paper) {
            pair(67, "1");
        }
        pair(8, layer);
        return own < 0 ? this : pair(62, String.valueOf(own));
    }

    DxfFile pair(int code, double value) {
        return pair(code, String.format(Locale.ROOT, "%.6f", value + 0.0));
    }

    DxfFile pair(int code, String value) {
        write(out, code, value);
        return this;
    }

    DxfFile point(int code, double x, double y, double z) {
        return pair(code, x).pair(code + 10, y).pair(code + 20, z);
    }

    private static void write(StringBuilder to, int code, String value) {
        to.append(String.format(Locale.ROOT, "%3d", code)).append('\n').append(value).append('\n');
    }

    private String next() {
        handle++;
        return Integer.toHexString(handle).toUpperCase(Locale.ROOT);
    }

    /** Writes a text as it is, so that no letter of it means anything else to a reader. */
    static String plain(String text) {
        return Printable.of(text).replace("%%", "% %").replace("^", "^ ").replace("\\U+", "\\ U+");
    }

    /** Inserts a light unit with its attributes. */
    void unit(DxfUnit unit, double x, double y, double turnDeg, double lettersM) {
        entity("INSERT", "UNIT", 4, -1).pair(100, "AcDbBlockReference").pair(66, "1").pair(2, UNIT_BLOCK);
        String owner = Integer.toHexString(handle).toUpperCase(Locale.ROOT);
        point(10, x, y, unit.elevationM()).pair(41, 1).pair(42, 1).pair(43, 1).pair(50, turnDeg);
        String[] values = {unit.aid(), unit.unit(), unit.setting(), String.format(Locale.ROOT, "%.3f", unit.elevationM())};
        for (int i = 0; i < TAGS.size(); i++) {
            pair(0, "ATTRIB").pair(5, next()).pair(330, owner).pair(100, "AcDbEntity").pair(8, "UNIT").pair(100, "AcDbText")
                    .point(10, x, y, unit.elevationM()).pair(40, lettersM).pair(1, plain(values[i])).pair(50, turnDeg).pair(7, STYLE)
                    .pair(100, "AcDbAttribute").pair(2, TAGS.get(i)).pair(70, "1");
        }
        pair(0, "SEQEND").pair(5, next()).pair(330, owner).pair(100, "AcDbEntity").pair(8, "UNIT");
    }

    private void unitBlock() {
        String record = record(UNIT_BLOCK, "0");
        begin(record, UNIT_BLOCK, "2");
        StringBuilder before = out;
        out = blocks;
        pair(0, "LWPOLYLINE").pair(5, next()).pair(330, record).pair(100, "AcDbEntity").pair(8, "0").pair(100, "AcDbPolyline")
                .pair(90, "4").pair(70, "1");
        double[][] corners = {{-UNIT_HALF_M, -UNIT_HALF_M}, {UNIT_HALF_M, -UNIT_HALF_M}, {UNIT_HALF_M, UNIT_HALF_M},
                {-UNIT_HALF_M, UNIT_HALF_M}};
        for (double[] corner : corners) {
            pair(10, corner[0]).pair(20, corner[1]);
        }
        for (String tag : TAGS) {
            pair(0, "ATTDEF").pair(5, next()).pair(330, record).pair(100, "AcDbEntity").pair(8, "0").pair(100, "AcDbText")
                    .point(10, 0, 0, 0).pair(40, UNIT_HALF_M).pair(1, "").pair(7, STYLE).pair(100, "AcDbAttributeDefinition")
                    .pair(3, tag).pair(2, tag).pair(70, "1");
        }
        out = before;
        end(record);
    }

    /** Adds a dimension between two points with its line through a third. */
    void dimension(double[] from, double[] to, double[] line, String text) {
        dimensions++;
        String name = "*D" + dimensions;
        double turn = Math.atan2(to[1] - from[1], to[0] - from[0]);
        double off = (line[0] - from[0]) * -Math.sin(turn) + (line[1] - from[1]) * Math.cos(turn);
        double[] start = {from[0] - off * Math.sin(turn), from[1] + off * Math.cos(turn)};
        double[] stop = {to[0] - off * Math.sin(turn), to[1] + off * Math.cos(turn)};
        double[] middle = {(start[0] + stop[0]) / 2, (start[1] + stop[1]) / 2};
        String record = record(name, "0");
        begin(record, name, "1");
        StringBuilder before = out;
        out = blocks;
        for (double[][] piece : new double[][][] {{start, stop}, {from, start}, {to, stop}}) {
            pair(0, "LINE").pair(5, next()).pair(330, record).pair(100, "AcDbEntity").pair(8, "DIMENSION").pair(100, "AcDbLine")
                    .point(10, piece[0][0], piece[0][1], 0).point(11, piece[1][0], piece[1][1], 0);
        }
        double letters = 1.8 * unitsPerMm;
        pair(0, "TEXT").pair(5, next()).pair(330, record).pair(100, "AcDbEntity").pair(8, "DIMENSION").pair(100, "AcDbText")
                .point(10, middle[0], middle[1], 0).pair(40, letters).pair(1, plain(text)).pair(50, Math.toDegrees(turn)).pair(7, STYLE)
                .pair(72, "1").point(11, middle[0], middle[1], 0).pair(100, "AcDbText");
        out = before;
        end(record);
        entity("DIMENSION", "DIMENSION", 8, -1).pair(100, "AcDbDimension").pair(2, name).point(10, stop[0], stop[1], 0)
                .point(11, middle[0], middle[1], 0).pair(70, "33").pair(71, "5")
                .pair(42, Math.hypot(to[0] - from[0], to[1] - from[1])).pair(3, STYLE)
                .pair(100, "AcDbAlignedDimension").point(13, from[0], from[1], 0).point(14, to[0], to[1], 0);
    }

    private String record(String name, String layout) {
        String record = next();
        record(record, name, layout);
        return record;
    }

    private void record(String record, String name, String layout) {
        write(records, 0, "BLOCK_RECORD");
        write(records, 5, record);
        write(records, 330, "1");
        write(records, 100, "AcDbSymbolTableRecord");
        write(records, 100, "AcDbBlockTableRecord");
        write(records, 2, name);
        write(records, 340, layout);
    }

    private void begin(String record, String name, String flags) {
        write(blocks, 0, "BLOCK");
        write(blocks, 5, next());
        write(blocks, 330, record);
        write(blocks, 100, "AcDbEntity");
        if (record.equals(PAPER)) {
            write(blocks, 67, "1");
        }
        write(blocks, 8, "0");
        write(blocks, 100, "AcDbBlockBegin");
        write(blocks, 2, name);
        write(blocks, 70, flags);
        write(blocks, 10, "0.0");
        write(blocks, 20, "0.0");
        write(blocks, 30, "0.0");
        write(blocks, 3, name);
        write(blocks, 1, "");
    }

    private void end(String record) {
        write(blocks, 0, "ENDBLK");
        write(blocks, 5, next());
        write(blocks, 330, record);
        write(blocks, 100, "AcDbEntity");
        if (record.equals(PAPER)) {
            write(blocks, 67, "1");
        }
        write(blocks, 8, "0");
        write(blocks, 100, "AcDbBlockEnd");
    }

    /**
     * Where the paper looks into the model.
     *
     * @param centreX  middle of the window on paper, millimetres
     * @param centreY  middle of the window on paper, millimetres from its foot
     * @param widthMm  width of the window
     * @param heightMm height of the window
     * @param viewX    middle of what is seen, turned back by the twist, model units
     * @param viewY    middle of what is seen, turned back by the twist, model units
     * @param twistDeg turn of what is seen, decimal degrees, counter-clockwise
     * @param paperMm  width and height of the paper
     */
    record Window(double centreX, double centreY, double widthMm, double heightMm, double viewX, double viewY, double twistDeg,
            double[] paperMm) {
    }

    private void viewport(Window window, int number, double viewHeight) {
        boolean whole = number == 1;
        entity("VIEWPORT", "VIEWPORT", 9, -1).pair(100, "AcDbViewport");
        point(10, whole ? window.paperMm()[0] / 2 : window.centreX(), whole ? window.paperMm()[1] / 2 : window.centreY(), 0)
                .pair(40, whole ? window.paperMm()[0] : window.widthMm()).pair(41, whole ? window.paperMm()[1] : window.heightMm())
                .pair(68, String.valueOf(number)).pair(69, String.valueOf(number));
        pair(12, whole ? window.paperMm()[0] / 2 : window.viewX()).pair(22, whole ? window.paperMm()[1] / 2 : window.viewY());
        pair(13, 0).pair(23, 0).pair(14, 10).pair(24, 10).pair(15, 10).pair(25, 10).point(16, 0, 0, 1).point(17, 0, 0, 0).pair(42, 50)
                .pair(43, 0).pair(44, 0).pair(45, whole ? window.paperMm()[1] : viewHeight).pair(50, 0)
                .pair(51, whole ? 0 : window.twistDeg()).pair(72, "1000").pair(90, "32768").pair(281, "0").pair(71, "1").pair(74, "0");
    }

    /** Returns the whole file; a layout without a window looks at nothing. */
    String text(double[] extent, Window window, double viewHeight) {
        StringBuilder content = out;
        out = paper;
        viewport(window, 1, viewHeight);
        if (window.widthMm() > 0) {
            viewport(window, 2, viewHeight);
        }
        StringBuilder file = new StringBuilder();
        String entities = model.toString() + paper;
        record(MODEL, "*Model_Space", MODEL_LAYOUT);
        record(PAPER, "*Paper_Space", PAPER_LAYOUT);
        for (String[] space : new String[][] {{MODEL, "*Model_Space"}, {PAPER, "*Paper_Space"}}) {
            begin(space[0], space[1], "0");
            end(space[0]);
        }
        out = file;
        String tables = DxfTables.tables(layers, records.toString(), unitsPerMm, extent, this::next);
        String objects = DxfTables.objects(window.paperMm(), this::next);
        pair(0, "SECTION").pair(2, "HEADER").pair(9, "$ACADVER").pair(1, "AC1021").pair(9, "$DWGCODEPAGE").pair(3, "ANSI_1252")
                .pair(9, "$INSUNITS").pair(70, "6").pair(9, "$MEASUREMENT").pair(70, "1").pair(9, "$EXTMIN")
                .point(10, extent[0], extent[1], 0).pair(9, "$EXTMAX").point(10, extent[2], extent[3], 0)
                .pair(9, "$HANDSEED").pair(5, Integer.toHexString(handle + 1).toUpperCase(Locale.ROOT)).pair(0, "ENDSEC");
        pair(0, "SECTION").pair(2, "CLASSES").pair(0, "ENDSEC");
        file.append(tables);
        pair(0, "SECTION").pair(2, "BLOCKS");
        file.append(blocks);
        pair(0, "ENDSEC").pair(0, "SECTION").pair(2, "ENTITIES");
        file.append(entities);
        pair(0, "ENDSEC");
        file.append(objects);
        pair(0, "EOF");
        out = content;
        return file.toString();
    }
}
