package slopewright.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.exchange.EndFile;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.PointFile;
import slopewright.exchange.runways.RunwayData;
import slopewright.exchange.survey.SurveyFile;
import slopewright.exchange.survey.TablePreview;
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

    /** A project of one aid that is changed and checked, changed again in a way that gives no yes, and checked again. */
    JUDGED("small") {
        @Override
        boolean isWhole() {
            return true;
        }

        @Override
        void feed(Path input, Sources sources, Breaker breaker) throws IOException, ProjectFileException {
            int checked = Judged.judge(Files.readAllBytes(input), input.getFileName().toString(), breaker,
                    sources.folder().resolveSibling("failures"));
            if (checked == 0) {
                refuse();
            }
            count(checked);
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
                case 5 -> command("export", file, "-o", out + ".aixm", "--force", "--date", "2026-06-01");
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
        void feed(Path input, Sources sources, Breaker breaker) throws IOException, ProjectFileException {
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

    /** The beginning of a table, as the window looks at it before it is imported. */
    TABLE_PREVIEW("survey") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) {
            try {
                TablePreview.of(input);
            } catch (ExchangeException e) {
                refuse();
            }
        }
    },

    /** Open runway data, with the licence that lies beside them. */
    RUNWAYS("runways") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) throws IOException {
            try {
                RunwayData data = RunwayData.read(input);
                data.licence();
                for (String code : List.of("ZZAA", "ZZAC", "Z07", "")) {
                    data.find(code).ifPresent(airport -> data.offers(airport, "a licence", LocalDate.of(2026, 6, 1)));
                }
            } catch (ExchangeException e) {
                refuse();
            }
        }
    },

    /** A table of runway ends. */
    ENDS("ends") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) {
            try {
                EndFile.read(input);
            } catch (ExchangeException e) {
                refuse();
            }
        }
    },

    /** Points in a frame, against which a surface is held. */
    POINT_TABLE("point-table") {
        @Override
        void feed(Path input, Sources sources, Breaker breaker) {
            try {
                PointFile.read(input, (block, count, firstLine) -> block.id(count - 1));
            } catch (ExchangeException e) {
                refuse();
            }
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
            command("report", sources.little().toString(), "--template", folder.toString(), "-o", input.resolveSibling("t.html").toString(),
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
                command("book", input.toString(), "--into", sources.little().toString(), "-o",
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
    private static final Pattern IN_GRID = Pattern.compile("utm29|\\.(las|xml|tif|xlsx)$");
    private final String corpus;
    private static final ThreadLocal<Integer> CHECKED = ThreadLocal.withInitial(() -> 0);
    private static final ThreadLocal<Boolean> REFUSED = ThreadLocal.withInitial(() -> false);

    Kind(String corpus) {
        this.corpus = corpus;
    }

    String corpus() {
        return corpus;
    }

    /** Feeds an input; whatever it throws is a fault. */
    abstract void feed(Path input, Sources sources, Breaker breaker) throws IOException, ProjectFileException;

    /** Returns whether an input is fed as it is, and broken by the kind itself. */
    boolean isWhole() {
        return false;
    }

    /** Counts projects that went through the whole check. */
    static void count(int projects) {
        CHECKED.set(CHECKED.get() + projects);
    }

    /** Returns how many projects went through the whole check since this was last asked. */
    static int checked() {
        int checked = CHECKED.get();
        CHECKED.set(0);
        return checked;
    }

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
        List<String> words = new ArrayList<>(List.of("import", input.toString(), "--into", sources.little().toString(), "-o",
                input.resolveSibling("new.slopewright").toString(), "--force", "--as", form));
        words.addAll(heights);
        if (IN_GRID.matcher(input.toString()).find()) {
            words.addAll(List.of("--grid", "EPSG:32629"));
        }
        command(words.toArray(String[]::new));
    }

    static void command(String... words) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        int code = Main.run(words, nowhere, new PrintStream(err, true, StandardCharsets.UTF_8), InputStream.nullInputStream());
        if ("check".equals(words[0]) && code != 2 && code != 3) {
            count(1);
        }
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
}
