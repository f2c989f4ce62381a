package slopewright.arch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The table of layers, {@code releng/config/layers.tsv}.
 *
 * @param rows one a bundle
 */
record LayerTable(List<Row> rows) {

    private static final int COLUMNS = 6;
    private static final String ANY = "*";
    private static final String ALL_BELOW = ".*";

    /**
     * What one bundle may require.
     *
     * @param layer a bundle requires bundles of lower layers only
     * @param bundle its name
     * @param group the folder of folders it lives in
     * @param own the project's bundles it may require
     * @param other further bundles and packages it may require or import
     * @param reexports bundles it hands on to those that require it
     */
    record Row(int layer, String bundle, String group, Set<String> own, Set<String> other, Set<String> reexports) {

        boolean permitsOwn(Row required) {
            return required.layer < layer && (own.contains(ANY) || own.contains(required.bundle));
        }

        boolean permitsOther(String name) {
            return other.stream().anyMatch(permitted -> matches(permitted, name));
        }

        private static boolean matches(String permitted, String name) {
            if (!permitted.endsWith(ALL_BELOW)) {
                return name.equals(permitted);
            }
            String stem = permitted.substring(0, permitted.length() - ALL_BELOW.length());
            return name.equals(stem) || name.startsWith(stem + ".");
        }
    }

    static LayerTable read() {
        return parse(SourceTree.text(SourceTree.root().resolve("releng/config/layers.tsv")));
    }

    static LayerTable parse(String text) {
        List<Row> rows = new ArrayList<>();
        for (String line : text.lines().toList()) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] cells = line.split("\t", -1);
            if (cells.length != COLUMNS) {
                throw new IllegalArgumentException("the table of layers wants " + COLUMNS + " columns: " + line);
            }
            rows.add(new Row(Integer.parseInt(cells[0]), cells[1], cells[2], list(cells[3]), list(cells[4]), list(cells[5])));
        }
        return new LayerTable(List.copyOf(rows));
    }

    Optional<Row> row(String bundle) {
        return rows.stream().filter(row -> row.bundle().equals(bundle)).findFirst();
    }

    /** Whatever a bundle requires, imports or re-exports beyond its row, in words; empty where it keeps to it. */
    List<String> violations(BundleFolder bundle) {
        Optional<Row> found = row(bundle.name());
        if (found.isEmpty()) {
            return List.of(bundle + " is not in the table of layers");
        }
        Row row = found.get();
        List<String> violations = new ArrayList<>();
        if (!row.group().equals(bundle.group())) {
            violations.add(bundle + " lives in " + bundle.group() + ", not in " + row.group());
        }
        for (String required : bundle.names("Require-Bundle")) {
            boolean permitted = row(required).map(row::permitsOwn).orElseGet(() -> permitsOther(bundle, row, required));
            if (!permitted) {
                violations.add(bundle + " must not require " + required);
            }
        }
        for (String imported : bundle.names("Import-Package")) {
            if (!JdkPackages.contains(imported) && !permitsOther(bundle, row, imported)) {
                violations.add(bundle + " must not import " + imported);
            }
        }
        bundle.elements("Require-Bundle").stream()
                .filter(element -> "reexport".equals(element.getDirective("visibility")))
                .filter(element -> !row.reexports().contains(element.getValue()))
                .forEach(element -> violations.add(bundle + " must not re-export " + element.getValue()));
        return violations;
    }

    /** A fragment joins its host, so it may require what its host may. */
    private boolean permitsOther(BundleFolder bundle, Row row, String name) {
        return row.permitsOther(name)
                || bundle.names("Fragment-Host").stream().flatMap(host -> row(host).stream()).anyMatch(host -> host.permitsOther(name));
    }

    private static Set<String> list(String cell) {
        return cell.equals("-") ? Set.of() : Arrays.stream(cell.split(" ")).collect(Collectors.toUnmodifiableSet());
    }
}
