package slopewright.exchange.map;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import slopewright.exchange.internal.PlainNumbers;
import slopewright.exchange.internal.sqlite.SqliteFile;
import slopewright.messages.Message;
import slopewright.messages.Words;

/**
 * Puts features into an OGC GeoPackage 1.3: a layer for each kind of feature in longitude and latitude on WGS 84, its style (OGC SLD 1.0)
 * in the table {@code layer_styles}, and a table {@code about} with what a reader must know. The third coordinate is the elevation in the
 * vertical datum that {@code about} names.
 */
public final class GeoPackageFile {

    /** The letters GPKG, and version 1.3.0. */
    private static final int APPLICATION = 0x47504B47;
    private static final int VERSION = 10_300;
    private static final int WGS84 = 4326;
    private static final int HIGH = 1000;
    private static final String DAY = "2000-01-01";
    private static final String WGS84_WKT = "GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,298.257223563]],"
            + "PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433],AUTHORITY[\"EPSG\",\"4326\"]]";

    private static final String SRS_SQL = "CREATE TABLE gpkg_spatial_ref_sys (srs_name TEXT NOT NULL, srs_id INTEGER NOT NULL PRIMARY KEY, "
            + "organization TEXT NOT NULL, organization_coordsys_id INTEGER NOT NULL, definition TEXT NOT NULL, description TEXT)";
    private static final String CONTENTS_SQL = "CREATE TABLE gpkg_contents (table_name TEXT NOT NULL PRIMARY KEY, data_type TEXT NOT NULL, "
            + "identifier TEXT UNIQUE, description TEXT DEFAULT '', last_change DATETIME NOT NULL DEFAULT "
            + "(strftime('%Y-%m-%dT%H:%M:%fZ','now')), min_x DOUBLE, min_y DOUBLE, max_x DOUBLE, max_y DOUBLE, srs_id INTEGER, "
            + "CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys(srs_id))";
    private static final String GEOMETRY_SQL = "CREATE TABLE gpkg_geometry_columns (table_name TEXT NOT NULL, column_name TEXT NOT NULL, "
            + "geometry_type_name TEXT NOT NULL, srs_id INTEGER NOT NULL, z TINYINT NOT NULL, m TINYINT NOT NULL, "
            + "CONSTRAINT pk_geom_cols PRIMARY KEY (table_name, column_name), CONSTRAINT uk_gc_table_name UNIQUE (table_name), "
            + "CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name), "
            + "CONSTRAINT fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys (srs_id))";
    private static final String STYLES_SQL = "CREATE TABLE layer_styles (id INTEGER PRIMARY KEY, f_table_catalog TEXT, "
            + "f_table_schema TEXT, "
            + "f_table_name TEXT, f_geometry_column TEXT, styleName TEXT, styleQML TEXT, styleSLD TEXT, useAsDefault BOOLEAN, "
            + "description TEXT, owner TEXT, ui TEXT, update_time DATETIME)";
    private static final String ABOUT_SQL = "CREATE TABLE about (fid INTEGER PRIMARY KEY, name TEXT, value TEXT)";

    private final MapDocument document;
    private final String day;
    private final List<SqliteFile.Row> contents = new ArrayList<>();
    private final List<SqliteFile.Row> geometries = new ArrayList<>();
    private final List<SqliteFile.Row> styles = new ArrayList<>();
    private final List<SqliteFile.Table> layers = new ArrayList<>();

    private GeoPackageFile(MapDocument document) {
        this.document = document;
        day = (document.made().date().matches("\\d{4}-\\d{2}-\\d{2}") ? document.made().date() : DAY) + "T00:00:00.000Z";
    }

    /** Returns the bytes of the file; the same features give the same bytes. */
    public static byte[] bytes(MapDocument document) {
        return new GeoPackageFile(document).write();
    }

    private byte[] write() {
        for (MapStyle style : MapStyle.values()) {
            List<MapFeature> features = document.features().stream().filter(feature -> feature.kind().equals(style.kind())).toList();
            if (!features.isEmpty()) {
                layer(style, features);
            }
        }
        attributes("about");
        attributes("layer_styles");
        List<SqliteFile.Table> tables = new ArrayList<>(List.of(
                new SqliteFile.Table("gpkg_spatial_ref_sys", SRS_SQL, references(), List.of()),
                new SqliteFile.Table("gpkg_contents", CONTENTS_SQL, contents, List.of(new int[] {0}, new int[] {2})),
                new SqliteFile.Table("gpkg_geometry_columns", GEOMETRY_SQL, geometries, List.of(new int[] {0, 1}, new int[] {0}))));
        tables.addAll(layers);
        tables.add(new SqliteFile.Table("about", ABOUT_SQL, about(), List.of()));
        tables.add(new SqliteFile.Table("layer_styles", STYLES_SQL, styles, List.of()));
        return SqliteFile.write(tables, APPLICATION, VERSION);
    }

    private static List<SqliteFile.Row> references() {
        return List.of(new SqliteFile.Row(-1, Arrays.asList("Undefined cartesian SRS", null, "NONE", -1L, "undefined", null)),
                new SqliteFile.Row(0, Arrays.asList("Undefined geographic SRS", null, "NONE", 0L, "undefined", null)),
                new SqliteFile.Row(WGS84, Arrays.asList("WGS 84", null, "EPSG", (long) WGS84, WGS84_WKT, "longitude, latitude")));
    }

    private List<SqliteFile.Row> about() {
        Map<String, String> facts = new LinkedHashMap<>(document.made().facts(document.words()));
        document.basis().facts().forEach((name, value) -> facts.put(name, value == null ? "" : value instanceof Double number ? PlainNumbers
                .property(number).toPlainString() : value.toString()));
        facts.values().removeIf(String::isEmpty);
        List<SqliteFile.Row> rows = new ArrayList<>();
        facts.forEach((name, value) -> rows.add(new SqliteFile.Row(rows.size() + 1L, Arrays.asList(null, name, value))));
        document.notes().forEach(note -> rows.add(new SqliteFile.Row(rows.size() + 1L, Arrays.asList(null, "note", note))));
        return rows;
    }

    private void attributes(String table) {
        contents.add(new SqliteFile.Row(contents.size() + 1L, Arrays.asList(table, "attributes", table, "", day, null, null, null, null,
                null)));
    }

    private void layer(MapStyle style, List<MapFeature> features) {
        String table = style.kind().replace('-', '_');
        Map<String, String> columns = new LinkedHashMap<>();
        features.forEach(feature -> feature.properties().forEach((name, value) -> columns.merge(name, type(value),
                (one, other) -> one.isEmpty() ? other : other.isEmpty() || one.equals(other) ? one : "TEXT")));
        StringBuilder sql = new StringBuilder("CREATE TABLE " + table + " (fid INTEGER PRIMARY KEY, geom " + geometryType(features)
                + ", id TEXT, kind TEXT, name TEXT");
        columns.forEach((name, type) -> sql.append(", \"").append(name).append("\" ").append(type.isEmpty() ? "TEXT" : type));
        List<SqliteFile.Row> rows = new ArrayList<>();
        double[] box = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (MapFeature feature : features) {
            List<Object> row = new ArrayList<>(Arrays.asList(null, geometry(feature), feature.id(), feature.kind(), feature.name()));
            columns.forEach((name, type) -> row.add(value(feature.properties().get(name), type)));
            rows.add(new SqliteFile.Row(rows.size() + 1L, row));
            for (MapPosition position : feature.positions()) {
                box[0] = Math.min(box[0], position.longitudeDeg());
                box[1] = Math.min(box[1], position.latitudeDeg());
                box[2] = Math.max(box[2], position.longitudeDeg());
                box[3] = Math.max(box[3], position.latitudeDeg());
            }
        }
        layers.add(new SqliteFile.Table(table, sql.append(')').toString(), rows, List.of()));
        contents.add(new SqliteFile.Row(contents.size() + 1L, Arrays.asList(table, "features", table, document.words().render(Message.of(
                "map.elevations-above", Words.name(document.basis().verticalDatum()))), day, box[0], box[1], box[2], box[3],
                (long) WGS84)));
        boolean all = features.stream().allMatch(MapFeature::isHigh);
        long z = all ? 1 : features.stream().anyMatch(MapFeature::isHigh) ? 2 : 0;
        geometries.add(new SqliteFile.Row(geometries.size() + 1L, Arrays.asList(table, "geom", geometryType(features), (long) WGS84, z,
                0L)));
        String sld = style.sld(table, features.stream().map(MapFeature::shape).distinct().sorted().toList());
        styles.add(new SqliteFile.Row(styles.size() + 1L, Arrays.asList(null, "", "", table, "geom", table, null, sld, 1L, "", "", null,
                day)));
    }

    private static String geometryType(List<MapFeature> features) {
        List<MapFeature.Shape> shapes = features.stream().map(MapFeature::shape).distinct().toList();
        return shapes.size() > 1 ? "GEOMETRY" : switch (shapes.get(0)) {
            case POINT -> "POINT";
            case LINE -> "LINESTRING";
            case AREA -> "POLYGON";
        };
    }

    private static String type(Object value) {
        return value == null ? "" : value instanceof Boolean ? "BOOLEAN" : value instanceof Integer || value instanceof Long ? "INTEGER"
                : value instanceof Number ? "DOUBLE" : "TEXT";
    }

    private static Object value(Object value, String type) {
        if (value == null) {
            return null;
        }
        return switch (type) {
            case "BOOLEAN" -> Boolean.TRUE.equals(value) ? 1L : 0L;
            case "INTEGER" -> ((Number) value).longValue();
            case "DOUBLE" -> ((Number) value).doubleValue();
            default -> value instanceof Number number ? String.format(Locale.ROOT, "%s", number) : value.toString();
        };
    }

    /** A geometry: its head of the GeoPackage, then well-known binary in the order of bytes of the head. */
    private static byte[] geometry(MapFeature feature) {
        List<MapPosition> positions = feature.shape() == MapFeature.Shape.AREA ? feature.ring() : feature.positions();
        boolean high = feature.isHigh();
        ByteBuffer blob = ByteBuffer.allocate(8 + 13 + positions.size() * (high ? 24 : 16)).order(ByteOrder.LITTLE_ENDIAN);
        blob.put((byte) 'G').put((byte) 'P').put((byte) 0).put((byte) 1).putInt(WGS84).put((byte) 1);
        int kind = high ? HIGH : 0;
        switch (feature.shape()) {
            case POINT -> blob.putInt(kind + 1);
            case LINE -> blob.putInt(kind + 2).putInt(positions.size());
            case AREA -> blob.putInt(kind + 3).putInt(1).putInt(positions.size());
        }
        for (MapPosition position : positions) {
            blob.putDouble(position.longitudeDeg()).putDouble(position.latitudeDeg());
            if (high) {
                blob.putDouble(position.elevationM());
            }
        }
        return Arrays.copyOf(blob.array(), blob.position());
    }
}
