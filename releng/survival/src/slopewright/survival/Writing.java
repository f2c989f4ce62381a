package slopewright.survival;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import slopewright.headless.Main;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.report.PaperSize;
import slopewright.report.handover.Deliverables;
import slopewright.report.handover.Handover;
import slopewright.report.handover.HandoverFile;
import slopewright.report.handover.HandoverOptions;
import slopewright.ui.internal.RecoveryFile;

/** The ways in which the product writes: each writes the one content and the other, turn by turn, always the same two. */
enum Writing {

    /** What the window does when it saves. */
    SAVE {
        @Override
        void write(Source source, Path folder, int turn) throws Exception {
            ProjectFile.saveOver(ProjectFile.copy(source.projects().get(turn)), folder.resolve("p.slopewright"));
        }
    },

    /** What the window does while work is not saved. */
    AUTOSAVE {
        @Override
        void write(Source source, Path folder, int turn) {
            new RecoveryFile(folder.resolve("p.slopewright")).slot().write(ProjectFile.bytes(source.projects().get(turn)));
        }
    },

    /** The command line: points into a project. */
    IMPORT {
        @Override
        void write(Source source, Path folder, int turn) throws IOException {
            run("import", source.demo().resolve(turn == 0 ? "survey/obstacles.csv" : "survey/obstacles.kml").toString(), "--into",
                    source.project(), "-o", folder.resolve("p.slopewright").toString(), "--force", "--source", "turn " + turn);
        }
    },

    /** The command line: a map. */
    EXPORT {
        @Override
        void write(Source source, Path folder, int turn) throws IOException {
            run("export", source.project(), "-o", folder.resolve("map.geojson").toString(), "--force", "--beam-length-m",
                    turn == 0 ? "5000" : "6000");
        }
    },

    /** What the window hands over: a few files one after the other, without the papers that take long. */
    HANDOVER {
        @Override
        void write(Source source, Path folder, int turn) throws Exception {
            Project project = source.projects().get(turn);
            List<HandoverFile> wanted = Deliverables.of(project).stream().filter(file -> !file.fileName().endsWith(".pdf")
                    && !file.fileName().startsWith("report")).limit(FILES)
                    .toList();
            Set<String> names = wanted.stream().map(HandoverFile::fileName).collect(Collectors.toSet());
            List<Handover.Entry> entries = Handover.write(project, wanted, folder, source.options(), names, next -> true);
            if (entries.stream().anyMatch(entry -> entry.state() != Handover.State.WRITTEN)) {
                throw new IOException(entries.toString());
            }
        }
    };

    private static final int OBSTACLES = 3000;
    private static final int FILES = 5;

    /**
     * What is written.
     *
     * @param demo     folder of the demonstration
     * @param projects the two projects
     */
    record Source(Path demo, List<Project> projects) {

        static Source of(Path demo, Writing writing) throws Exception {
            Project first = ProjectFile.load(demo.resolve("harrow-vale.slopewright"));
            for (int i = 0; writing != HANDOVER && i < OBSTACLES; i++) {
                Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
                obstacle.setName("mast " + i);
                first.getAerodrome().getObstacles().add(obstacle);
            }
            Ids.assign(first);
            Project second = ProjectFile.copy(first);
            second.setName("the other content");
            return new Source(demo, List.of(first, second));
        }

        String project() {
            return demo.resolve("harrow-vale.slopewright").toString();
        }

        HandoverOptions options() {
            return new HandoverOptions(LocalDate.of(2026, 6, 1), PaperSize.A4);
        }
    }

    /** Writes one of the two contents, 0 or 1. */
    abstract void write(Source source, Path folder, int turn) throws Exception;

    private static void run(String... words) throws IOException {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream err = new PrintStream(said, true);
        int code = Main.run(words, new PrintStream(new ByteArrayOutputStream()), err, InputStream.nullInputStream());
        if (code != 0) {
            throw new IOException(said.toString());
        }
    }

    /** Words: the way, folder of the demonstration, folder, how often; writes until it is killed, or so often. */
    public static void main(String[] words) throws Exception {
        Writing writing = valueOf(words[0]);
        Source source = Source.of(Path.of(words[1]), writing);
        Path folder = Path.of(words[2]);
        long times = Long.parseLong(words[3]);
        System.out.println("ready");
        System.out.flush();
        for (long i = 0; i < times; i++) {
            writing.write(source, folder, (int) (i % 2));
        }
    }
}
