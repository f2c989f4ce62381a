package slopewright.fuzz;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFile;
import slopewright.headless.Main;
import slopewright.model.io.ProjectFileException;
import slopewright.siting.SitingException;
import slopewright.siting.site.SurveyPoints;
import slopewright.ui.plan.internal.image.PictureProbe;

/** What is fed, and with what the readers may end. */
enum Kind {

    /** A project through the whole check. */
    PROJECT("slopewright") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) {
            command("check", input.toString(), "--json", "--all");
        }
    },

    /** A project of one aid and little beside it through the whole check: a hundred times as many in the same time. */
    SMALL("small") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) {
            command("check", input.toString());
        }
    },

    /** A project of one aid through what is handed over. */
    SMALL_OUTPUTS("small") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) throws IOException {
            String file = input.toString();
            String out = input.resolveSibling("out").toString();
            Matcher aid = AID.matcher(Files.readString(input, StandardCharsets.ISO_8859_1));
            String name = aid.find() ? aid.group(1) : "approach-aid-1";
            switch (breaker.upTo(8)) {
                case 0 -> command("export", file, "-o", out + ".kml", "--force");
                case 1 -> command("export", file, "-o", out + ".geojson", "--force");
                case 2 -> command("schedule", file, "-o", out + ".csv", "--force");
                case 3 -> command("draw", file, "--aid", name, "--view", "plan", "-o", out + ".svg", "--force");
                case 4 -> command("draw", file, "--aid", name, "--view", "section", "-o", out + ".dxf", "--force");
                case 5 -> command("publish", file, "-o", out + ".csv", "--force");
                default -> command("report", file, "-o", out + ".html", "--force", "--date", "2026-06-01");
            }
        }
    },

    /** A project through what is handed over. */
    OUTPUTS("slopewright") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) {
            String file = input.toString();
            String out = input.resolveSibling("out").toString();
            switch (breaker.upTo(9)) {
                case 0 -> command("export", file, "-o", out + ".kml", "--force");
                case 1 -> command("export", file, "-o", out + ".geojson", "--force");
                case 2 -> command("report", file, "-o", out + ".html", "--force", "--date", "2026-06-01");
                case 3 -> command("schedule", file, "-o", out + ".csv", "--force");
                case 4 -> command("draw", file, "--aid", "approach-aid-1", "--view", "plan", "-o", out + ".svg", "--force");
                case 5 -> command("draw", file, "--aid", "approach-aid-1", "--view", "section", "-o", out + ".dxf", "--force");
                case 6 -> command("compare", file, "--end", "09", "--json");
                case 7 -> command("compare-versions", file, sources.projects().get(0).toString(), "--json");
                default -> command("report", file, "-o", out + ".pdf", "--force", "--date", "2026-06-01");
            }
        }
    },

    /** A survey file through its reader alone. */
    SURVEY("survey") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) {
            try {
                SurveyFile.read(input, shape -> {
                });
            } catch (ExchangeException e) {
                refuse();
            }
        }
    },

    /** A shapefile with the sound files that belong beside it. */
    SHAPES("shapes") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) throws IOException {
            String name = input.getFileName().toString();
            String stem = name.substring(name.indexOf('-') + 1, name.lastIndexOf('.'));
            for (String ending : List.of(".dbf", ".prj", ".cpg")) {
                Path beside = sources.folder().resolve("beside").resolve(stem + ending);
                if (Files.exists(beside)) {
                    Files.copy(beside, input.resolveSibling("input-" + stem + ending), StandardCopyOption.REPLACE_EXISTING);
                }
            }
            SURVEY.feed(input, sources, breaker);
        }
    },

    /** Survey files as obstacles. */
    OBSTACLES("survey") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) {
            survey(input, sources, "obstacles", breaker.upTo(3) == 0 ? List.of("--heights", "top") : List.of());
        }
    },

    /** Survey files as ground levels. */
    GROUND_LEVELS("survey") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) {
            survey(input, sources, "ground-levels", List.of("--heights", "ground"));
        }
    },

    /** Survey files as a block of points. */
    OBSTACLE_BLOCK("survey") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) {
            survey(input, sources, "obstacle-block", breaker.upTo(3) == 0 ? List.of("--heights", "top") : List.of());
        }
    },

    /** The file of a block of points. */
    POINTS("swpoints") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) throws IOException {
            try {
                SurveyPoints.read(input, SurveyPoints.sha256(Files.readAllBytes(input)));
            } catch (SitingException e) {
                refuse();
            }
        }
    },

    /** A report template. */
    TEMPLATE("template") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) throws IOException {
            Path folder = Files.createDirectories(input.resolveSibling("template"));
            for (String name : List.of("cover.html", "style.css", "template.properties", "logo.svg")) {
                Files.deleteIfExists(folder.resolve(name));
            }
            String name = input.getFileName().toString();
            Files.copy(input, folder.resolve(name.substring(name.indexOf('-') + 1)));
            command("report", sources.small().toString(), "--template", folder.toString(), "-o", input.resolveSibling("t.html").toString(),
                    "--force", "--date", "2026-06-01");
        }
    },

    /** A book of values. */
    BOOK("book") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) {
            if (breaker.upTo(2) == 0) {
                command("book", input.toString());
            } else {
                command("book", input.toString(), "--into", sources.small().toString(), "-o",
                        input.resolveSibling("b.slopewright").toString(), "--force");
            }
        }
    },

    /** An organisation's own rule set. */
    RULE_SET("rules") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) throws IOException {
            Path folder = Files.createDirectories(input.resolveSibling("rules"));
            for (Path whole : sources.of("rules")) {
                Files.write(folder.resolve(whole.getFileName()), Files.readAllBytes(whole));
            }
            String name = input.getFileName().toString();
            Files.write(folder.resolve(name.substring(name.indexOf('-') + 1)), Files.readAllBytes(input));
            command("rule-sets", "--check", folder.toString());
        }
    },

    /** A background picture. */
    PICTURE("picture") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) {
            try {
                PictureProbe.read(input);
            } catch (IOException e) {
                refuse();
            }
        }
    },

    /** The words of a command line. */
    WORDS("words") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) throws IOException {
            List<String> lines = List.of(Files.readString(input, StandardCharsets.ISO_8859_1).split("\n"));
            List<String> words = new ArrayList<>(List.of((lines.isEmpty() ? "" : breaker.one(lines)).split("\\s+")));
            words.removeIf(word -> word.startsWith("/") || word.contains(".."));
            words.replaceAll(word -> "PROJECT".equals(word) ? sources.small().toString()
                    : word.replace("OUT", input.resolveSibling("o").toString()));
            command(words.toArray(String[]::new));
        }
    };

    private static final Pattern AID = Pattern.compile("<aids [^>]*?xmi:id=\"([^\"]+)\"");
    private final String corpus;
    private static final ThreadLocal<Boolean> REFUSED = ThreadLocal.withInitial(() -> false);

    Kind(String corpus) {
        this.corpus = corpus;
    }

    String corpus() {
        return corpus;
    }

    /** Feeds an input; whatever it throws is a fault. */
    abstract void feed(Path input, Sources sources, Breaker breaker) throws IOException;

    static void refuse() {
        REFUSED.set(true);
    }

    /** Returns whether the last input was refused as it should be, and forgets it. */
    static boolean wasRefused() {
        boolean was = REFUSED.get();
        REFUSED.set(false);
        return was;
    }

    private static void survey(Path input, Sources sources, String form, List<String> heights) {
        List<String> words = new ArrayList<>(List.of("import", input.toString(), "--into", sources.small().toString(), "-o",
                input.resolveSibling("new.slopewright").toString(), "--force", "--as", form));
        words.addAll(heights);
        if (input.toString().contains("utm29")) {
            words.addAll(List.of("--grid", "EPSG:32629"));
        }
        command(words.toArray(String[]::new));
    }

    private static void command(String... words) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        int code = Main.run(words, nowhere, new PrintStream(err, true, StandardCharsets.UTF_8), InputStream.nullInputStream());
        if (code == 2 || code == 3) {
            refuse();
            if (Boolean.getBoolean("slopewright.fuzz.say")) {
                System.out.println(err.toString(StandardCharsets.UTF_8).strip());
            }
        }
        if (code < 0 || code == 4 || code > 5) {
            throw new IllegalStateException("exit code " + code + ": " + err.toString(StandardCharsets.UTF_8).strip());
        }
    }

    /** What is broken: whole files by what they are. */
    record Sources(Path folder, List<Path> projects) {

        static Sources of(Path root, Path folder) throws IOException, ProjectFileException {
            List<Path> projects = List.of(root.resolve("demo-data/harrow-vale/harrow-vale.slopewright"),
                    root.resolve("demo-data/every-family/every-family.slopewright"),
                    root.resolve("demo-data/harrow-vale-faults/harrow-vale-faults.slopewright"));
            Sources sources = new Sources(folder, projects);
            for (Path project : projects) {
                sources.put("slopewright", project.getFileName().toString(), Files.readAllBytes(project));
            }
            for (Map.Entry<String, byte[]> small : SmallProjects.of(projects.get(1)).entrySet()) {
                sources.put("small", small.getKey(), small.getValue());
            }
            try (Stream<Path> surveys = Files.walk(root.resolve("demo-data/harrow-vale/survey"))) {
                for (Path survey : surveys.filter(each -> Files.isRegularFile(each) && !each.toString().endsWith(".md")).toList()) {
                    String name = survey.getFileName().toString();
                    boolean isShape = "shapefile".equals(survey.getParent().getFileName().toString());
                    sources.put(name.endsWith(".swpoints") ? "swpoints" : !isShape ? "survey" : name.endsWith(".shp") ? "shapes" : "beside",
                            name, Files.readAllBytes(survey));
                }
            }
            Path others = root.resolve("bundles/tests/slopewright.exchange.tests/src/others");
            for (String name : List.of("float-deflate-tiled.tif", "int16-lzw.tif", "float-bigtiff-predictor3.tif",
                    "obstacles.xlsx", "light.dxf")) {
                sources.put("survey", name, Files.readAllBytes(others.resolve(name)));
            }
            sources.put("template", "cover.html", "<h1>{{title}}</h1>\n<p>{{aerodrome}}</p>\n{{verdict}}\n{{cautions}}\n".getBytes());
            sources.put("template", "style.css", "h1 { color: #203040; font-size: 18pt }\np { margin: 2mm }\n".getBytes());
            sources.put("template", "logo.svg", ("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\">\n"
                    + "<path d=\"M0 0L10 10\" fill=\"#123\"/>\n<g>\n<circle cx=\"5\" cy=\"5\" r=\"2\"/>\n</g>\n</svg>\n").getBytes());
            Path block = Files.createDirectories(folder.resolve("block"));
            command("import", root.resolve("demo-data/harrow-vale/survey/canopy-points.csv").toString(), "--into",
                    projects.get(0).toString(), "-o", block.resolve("p.slopewright").toString(), "--force", "--as", "obstacle-block");
            try (Stream<Path> points = Files.list(block)) {
                for (Path file : points.filter(each -> each.toString().endsWith(".swpoints")).toList()) {
                    sources.put("swpoints", "block.swpoints", Files.readAllBytes(file));
                }
            }
            Path book = folder.resolve("book").resolve("values.csv");
            Files.createDirectories(book.getParent());
            if (!Files.exists(book)) {
                command("book", book.toString(), "--collect", projects.get(1).toString());
            }
            if (!Files.exists(folder.resolve("rules"))) {
                command("rule-sets", "--new", folder.resolve("rules").toString(), "--over", "icao:9th");
            }
            BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
            image.setRGB(3, 4, 0xff8800);
            for (String form : List.of("png", "jpg", "tif")) {
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                ImageIO.write(image, form, out);
                sources.put("picture", "a." + form, out.toByteArray());
            }
            sources.put("words", "words.txt", ("check PROJECT --json --fail-on note\nsite PROJECT --end 09 --family four-unit-row\n"
                    + "signal PROJECT --aid approach-aid-1 --along-m -3000 --right-m 0 --height-m 150\ncompare PROJECT --end 09\n"
                    + "site --family two-bar --slope-deg 3 --runway-width-m 45 --code 4 --approach visual --eye-to-wheel-m 6\n"
                    + "surface PROJECT --aid approach-aid-1\ntolerance PROJECT --aid approach-aid-1 --samples 50\nfamilies\n"
                    + "rules --json\nvariation --latitude 51 --longitude -1 --date 2026-06-01\nschedule PROJECT -o OUT.xlsx --force\n"
                    + "export PROJECT -o OUT.kml\nportable PROJECT --aid approach-aid-4 --slope-deg 6ft\n"
                    + "directions PROJECT --helipad helipad-1\nbook PROJECT\n").getBytes());
            return sources;
        }

        private void put(String corpus, String name, byte[] bytes) throws IOException {
            Files.write(Files.createDirectories(folder.resolve(corpus)).resolve(name), bytes);
        }

        List<Path> of(String corpus) throws IOException {
            try (Stream<Path> files = Files.list(folder.resolve(corpus))) {
                return files.filter(Files::isRegularFile).sorted().toList();
            }
        }

        Path small() {
            return folder.resolve("slopewright").resolve("harrow-vale.slopewright");
        }
    }
}
