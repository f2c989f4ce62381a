package slopewright.product;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Holds what the product contains against {@code shipped.tsv}, NOTICE, the target definition and the folder of licence texts, and writes
 * the bill of materials (CycloneDX 1.5) beside it. A work without a licence text, one that is not in NOTICE, and one in NOTICE that is
 * not shipped, each end the build. Run by the build of the product. Its own generator and not the plugin for Maven, because the
 * bundles come by p2, where wrapped libraries have lost their Maven coordinates.
 */
public final class Shipped {

    private static final String OWN = "slopewright.";
    private static final Pattern BUNDLE = Pattern.compile("(.+)_(\\d+\\.\\d+\\.\\d+)(\\.[^_]*?)?(\\.jar)?");
    private static final Pattern DEPENDENCY = Pattern.compile("<groupId>([^<]+)</groupId>\\s*<artifactId>([^<]+)</artifactId>\\s*"
            + "<version>([^<]+)</version>");

    /** One line of the table. */
    private record Row(String bundle, String coordinates, String licence, List<String> texts, String work) {

        static Row of(String line) {
            String[] cells = line.split("\t");
            return new Row(cells[0], cells[1], cells[2], List.of(cells[3].split(",")), cells[4]);
        }

        boolean fits(String name) {
            return bundle.endsWith("*") ? name.startsWith(bundle.substring(0, bundle.length() - 1)) : bundle.equals(name);
        }
    }

    /** One work that is shipped. */
    private record Component(String group, String artifact, String version, Row row, String sha256) {

        String json() {
            return String.join("\n", "    {", "      \"type\": \"library\",", "      \"bom-ref\": \"" + purl() + "\",",
                    "      \"group\": \"" + group + "\",", "      \"name\": \"" + artifact + "\",",
                    "      \"version\": \"" + version + "\",",
                    "      \"hashes\": [{\"alg\": \"SHA-256\", \"content\": \"" + sha256 + "\"}],",
                    "      \"licenses\": [{\"license\": {\"id\": \"" + row.licence() + "\"}}],", "      \"purl\": \"" + purl() + "\"",
                    "    }");
        }

        String purl() {
            return "pkg:maven/" + group + "/" + artifact + "@" + version;
        }
    }

    private final Path product;
    private final List<Row> rows;
    private final Map<String, String> versions = new HashMap<>();
    private final List<String> problems = new ArrayList<>();
    private final Set<Row> used = new LinkedHashSet<>();

    private Shipped(Path product, Path table, Path target) throws IOException {
        this.product = product;
        rows = Files.readAllLines(table).stream().filter(line -> !line.startsWith("#")).map(Row::of).toList();
        Matcher found = DEPENDENCY.matcher(Files.readString(target));
        while (found.find()) {
            versions.put(found.group(1) + ":" + found.group(2), found.group(3));
        }
    }

    /** Words: folder of the product, the table, the target definition, version of the product. */
    public static void main(String[] words) throws Exception {
        Shipped shipped = new Shipped(Path.of(words[0]), Path.of(words[1]), Path.of(words[2]));
        List<Component> components = shipped.components();
        shipped.holdData();
        shipped.holdNotice(components);
        shipped.rows.stream().filter(row -> !shipped.used.contains(row)).forEach(row -> shipped.problems.add(row.bundle()
                + " is in the table and not in the product"));
        shipped.problems.forEach(System.err::println);
        if (!shipped.problems.isEmpty()) {
            System.exit(1);
        }
        Files.writeString(shipped.product.resolve("bom.cdx.json"), bom(components, words[3]));
    }

    private List<Component> components() throws Exception {
        List<Component> components = new ArrayList<>();
        try (Stream<Path> plugins = Files.list(product.resolve("plugins"))) {
            for (Path plugin : plugins.sorted().toList()) {
                Matcher name = BUNDLE.matcher(plugin.getFileName().toString());
                if (!name.matches()) {
                    problems.add(plugin + " has no name of a bundle");
                } else if (!name.group(1).startsWith(OWN)) {
                    component(plugin, name.group(1), name.group(2)).ifPresent(components::add);
                }
            }
        }
        return components;
    }

    private Optional<Component> component(Path plugin, String name, String bundleVersion) throws Exception {
        Optional<Row> row = rows.stream().filter(each -> each.fits(name)).findFirst();
        if (row.isEmpty()) {
            problems.add(name + " is shipped and not in the table");
            return Optional.empty();
        }
        hold(row.get());
        String coordinates = row.get().coordinates().replace("*", name);
        String version = versions.get(coordinates);
        if (version == null || !bundleVersion.startsWith(version.replaceAll("-v.*", ""))) {
            problems.add(name + " " + bundleVersion + " is not what the target says: " + coordinates + " " + version);
            return Optional.empty();
        }
        String[] parts = coordinates.split(":");
        return Optional.of(new Component(parts[0], parts[1], version, row.get(), sha256(plugin)));
    }

    /** Notes that a row is used, and looks whether the product holds the texts of its licence. */
    private void hold(Row row) throws IOException {
        if (!used.add(row)) {
            return;
        }
        for (String text : row.texts()) {
            Path file = "LICENSE".equals(text) ? product.resolve(text) : product.resolve("licenses").resolve(text);
            if (!Files.isRegularFile(file) || Files.size(file) < 500) {
                problems.add(row.bundle() + ": the text of its licence is not in the product: " + text);
            }
        }
    }

    /** What is not a bundle of its own but lies in one of the product's. */
    private void holdData() throws IOException {
        for (Row row : rows.stream().filter(each -> each.bundle().contains("!")).toList()) {
            String[] place = row.bundle().split("!");
            try (Stream<Path> plugins = Files.list(product.resolve("plugins"))) {
                Optional<Path> own = plugins.filter(each -> each.getFileName().toString().startsWith(place[0] + "_")).findFirst();
                if (own.isPresent() && holds(own.get(), place[1])) {
                    hold(row);
                }
            }
        }
    }

    private static boolean holds(Path jar, String entry) throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            return file.getEntry(entry) != null;
        }
    }

    /** NOTICE names exactly the works that are shipped, each with its licence, and with its version where that is a number. */
    private void holdNotice(List<Component> components) throws IOException {
        Map<String, String[]> named = new LinkedHashMap<>();
        for (String line : Files.readAllLines(product.resolve("NOTICE"))) {
            if (line.startsWith("The tests use")) {
                break;
            }
            String[] cells = line.split(" {2,}");
            if (cells.length == 3 && !"Work".equals(cells[0])) {
                named.put(cells[0], cells);
            }
        }
        Set<String> works = new TreeSet<>(used.stream().map(Row::work).toList());
        works.stream().filter(work -> !named.containsKey(work)).forEach(work -> problems.add(work + " is shipped and not in NOTICE"));
        named.keySet().stream().filter(work -> !works.contains(work)).forEach(work -> problems.add(work + " is in NOTICE and not shipped"));
        used.stream().filter(row -> named.containsKey(row.work()))
                .filter(row -> !named.get(row.work())[2].contains(row.licence().replace("-or-later", "")))
                .forEach(row -> problems.add(row.work() + " has another licence in NOTICE than " + row.licence()));
        for (Component component : components) {
            String[] cells = named.get(component.row().work());
            if (cells != null && cells[1].matches("[\\d. /]+")
                    && Stream.of(cells[1].split(" / ")).noneMatch(component.version()::startsWith)) {
                problems.add(component.purl() + " has another version in NOTICE: " + cells[1]);
            }
        }
    }

    private static String sha256(Path plugin) throws Exception {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        try (Stream<Path> files = Files.walk(plugin)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                try (InputStream in = Files.newInputStream(file)) {
                    digest.update(in.readAllBytes());
                }
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static String bom(List<Component> components, String version) {
        List<String> all = components.stream().sorted(Comparator.comparing(Component::purl)).map(Component::json).toList();
        return String.join("\n", "{", "  \"bomFormat\": \"CycloneDX\",", "  \"specVersion\": \"1.5\",", "  \"version\": 1,",
                "  \"metadata\": {", "    \"component\": {\"type\": \"application\", \"name\": \"Slopewright\", \"version\": \"" + version
                        + "\", \"licenses\": [{\"license\": {\"id\": \"EPL-2.0\"}}]}",
                "  },", "  \"components\": [", String.join(",\n", all), "  ]", "}", "");
    }
}
