package slopewright.drawing.paint;

import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;

/** The tables and objects of a drawing exchange file of release 2007 that do not depend on what is drawn. */
final class DxfTables {

    private static final String DASHES = "14";
    private static final String STYLE_HANDLE = "11";
    private static final double LETTERS_MM = 2.5;

    private final StringBuilder out = new StringBuilder();

    private DxfTables() {
    }

    private DxfTables pair(int code, String value) {
        out.append(String.format(Locale.ROOT, "%3d", code)).append('\n').append(value).append('\n');
        return this;
    }

    private DxfTables pair(int code, double value) {
        return pair(code, String.format(Locale.ROOT, "%.6f", value));
    }

    private DxfTables table(String name, String handle, int entries) {
        return pair(0, "TABLE").pair(2, name).pair(5, handle).pair(330, "0").pair(100, "AcDbSymbolTable").pair(70, String.valueOf(entries));
    }

    private DxfTables entry(String type, String handle, String table, String subclass, String name) {
        return pair(0, type).pair("DIMSTYLE".equals(type) ? 105 : 5, handle).pair(330, table).pair(100, "AcDbSymbolTableRecord")
                .pair(100, subclass).pair(2, name).pair(70, "0");
    }

    /** Returns the section of tables. */
    static String tables(Map<String, Integer> layers, String blockRecords, double unitsPerMm, double[] extent, Supplier<String> handles) {
        DxfTables all = new DxfTables();
        all.pair(0, "SECTION").pair(2, "TABLES");
        all.window(extent);
        all.table("LTYPE", "5", 4);
        all.entry("LTYPE", "15", "5", "AcDbLinetypeTableRecord", "ByBlock").pair(3, "").pair(72, "65").pair(73, "0").pair(40, 0);
        all.entry("LTYPE", "16", "5", "AcDbLinetypeTableRecord", "ByLayer").pair(3, "").pair(72, "65").pair(73, "0").pair(40, 0);
        all.entry("LTYPE", "17", "5", "AcDbLinetypeTableRecord", "Continuous").pair(3, "Solid line").pair(72, "65").pair(73, "0")
                .pair(40, 0);
        all.entry("LTYPE", DASHES, "5", "AcDbLinetypeTableRecord", "DASHED").pair(3, "Dashed").pair(72, "65").pair(73, "2")
                .pair(40, 3.2 * unitsPerMm).pair(49, 2 * unitsPerMm).pair(74, "0").pair(49, -1.2 * unitsPerMm).pair(74, "0");
        all.pair(0, "ENDTAB").table("LAYER", "2", layers.size());
        layers.forEach((layer, colour) -> all.entry("LAYER", handles.get(), "2", "AcDbLayerTableRecord", layer)
                .pair(62, String.valueOf(colour)).pair(6, "Continuous").pair(290, "VIEWPORT".equals(layer) ? "0" : "1").pair(370, "-3"));
        all.pair(0, "ENDTAB").table("STYLE", "3", 2);
        all.style("Standard", "18");
        all.style(DxfFile.STYLE, STYLE_HANDLE);
        all.pair(0, "ENDTAB").table("VIEW", "6", 0).pair(0, "ENDTAB").table("UCS", "7", 0).pair(0, "ENDTAB").table("APPID", "9", 1);
        all.entry("APPID", "12", "9", "AcDbRegAppTableRecord", "ACAD").pair(0, "ENDTAB");
        all.table("DIMSTYLE", "A", 2).pair(100, "AcDbDimStyleTable").pair(71, "2");
        for (String[] style : new String[][] {{"Standard", "27"}, {DxfFile.STYLE, "28"}}) {
            all.entry("DIMSTYLE", style[1], "A", "AcDbDimStyleTableRecord", style[0]).pair(40, 1).pair(41, LETTERS_MM * unitsPerMm)
                    .pair(140, LETTERS_MM * unitsPerMm).pair(271, "2").pair(340, STYLE_HANDLE);
        }
        all.pair(0, "ENDTAB").table("BLOCK_RECORD", "1", blockRecords.split("\nBLOCK_RECORD\n", -1).length);
        all.out.append(blockRecords);
        return all.pair(0, "ENDTAB").pair(0, "ENDSEC").out.toString();
    }

    private void style(String name, String handle) {
        entry("STYLE", handle, "3", "AcDbTextStyleTableRecord", name).pair(40, 0).pair(41, 1).pair(50, 0).pair(71, "0").pair(42, LETTERS_MM)
                .pair(3, "arial.ttf").pair(4, "");
    }

    /** The window in which a reader first shows the model: all of it. */
    private void window(double[] extent) {
        double height = Math.max(extent[3] - extent[1], (extent[2] - extent[0]) / 1.5);
        table("VPORT", "8", 1).entry("VPORT", "13", "8", "AcDbViewportTableRecord", "*Active").pair(10, 0).pair(20, 0).pair(11, 1)
                .pair(21, 1).pair(12, (extent[0] + extent[2]) / 2).pair(22, (extent[1] + extent[3]) / 2).pair(13, 0).pair(23, 0)
                .pair(14, 10).pair(24, 10).pair(15, 10).pair(25, 10).pair(16, 0).pair(26, 0).pair(36, 1).pair(17, 0).pair(27, 0)
                .pair(37, 0).pair(40, height).pair(41, 1.5).pair(42, 50).pair(43, 0).pair(44, 0).pair(50, 0).pair(51, 0).pair(71, "0")
                .pair(72, "1000").pair(73, "1").pair(74, "3").pair(75, "0").pair(76, "0").pair(77, "0").pair(78, "0").pair(0, "ENDTAB");
    }

    /** Returns the section of objects: the dictionaries, and one layout for the model and one for the paper. */
    static String objects(double[] paperMm, Supplier<String> handles) {
        DxfTables all = new DxfTables();
        all.pair(0, "SECTION").pair(2, "OBJECTS");
        all.dictionary("C", "0").pair(3, "ACAD_GROUP").pair(350, "D").pair(3, "ACAD_LAYOUT").pair(350, "1A");
        all.dictionary("D", "C");
        all.dictionary("1A", "C").pair(3, "Model").pair(350, "22").pair(3, "Sheet").pair(350, "1E");
        all.layout("22", "Model", "0", "1F", paperMm, "1024");
        all.layout("1E", "Sheet", "1", "1B", paperMm, "0");
        return all.pair(0, "ENDSEC").out.toString();
    }

    private DxfTables dictionary(String handle, String owner) {
        return pair(0, "DICTIONARY").pair(5, handle).pair(330, owner).pair(100, "AcDbDictionary").pair(281, "1");
    }

    private void layout(String handle, String name, String tab, String record, double[] paperMm, String flags) {
        pair(0, "LAYOUT").pair(5, handle).pair(330, "1A").pair(100, "AcDbPlotSettings").pair(1, "").pair(2, "none_device").pair(4, "")
                .pair(6, "").pair(40, 0).pair(41, 0).pair(42, 0).pair(43, 0).pair(44, paperMm[0]).pair(45, paperMm[1]).pair(46, 0)
                .pair(47, 0).pair(48, 0).pair(49, 0).pair(140, 0).pair(141, 0).pair(142, 1).pair(143, 1).pair(70, flags).pair(72, "1")
                .pair(73, "0").pair(74, "5").pair(7, "").pair(75, "16").pair(147, 1).pair(148, 0).pair(149, 0)
                .pair(100, "AcDbLayout").pair(1, name).pair(70, "1").pair(71, tab).pair(10, 0).pair(20, 0).pair(11, paperMm[0])
                .pair(21, paperMm[1]).pair(12, 0).pair(22, 0).pair(32, 0).pair(14, 0).pair(24, 0).pair(34, 0).pair(15, paperMm[0])
                .pair(25, paperMm[1]).pair(35, 0).pair(146, 0).pair(13, 0).pair(23, 0).pair(33, 0).pair(16, 1).pair(26, 0).pair(36, 0)
                .pair(17, 0).pair(27, 1).pair(37, 0).pair(76, "0").pair(330, record);
    }
}
