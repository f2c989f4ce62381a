package slopewright.ui.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import slopewright.model.Project;
import slopewright.model.io.ProjectFile;

/**
 * The unsaved work of one open project: the recovery file that this window writes, under the number that it claimed, and those that
 * earlier runs left under other numbers. Used on the user interface thread.
 */
public final class KeptWork {

    private final ProjectClaim claim;
    private final RecoveryFile own;
    private final List<RecoveryFile> taken = new ArrayList<>();

    /** Claims a project; to be released. */
    public KeptWork(Path project, Project content) {
        claim = ProjectClaim.take(project);
        own = new RecoveryFile(project, claim.number());
        own.goesOnFrom(ProjectFile.seen(content));
    }

    /** Returns the numbered recovery files that are there beside a project and that no window uses. */
    public static List<RecoveryFile> left(Path project) {
        return numbers().mapToObj(number -> new RecoveryFile(project, number)).filter(file -> Files.exists(file.file()))
                .filter(file -> ProjectClaim.isFree(project, file.number())).toList();
    }

    private static IntStream numbers() {
        return IntStream.rangeClosed(1, ProjectClaim.MOST);
    }

    /**
     * Reads what earlier runs left. It stays where it is until the project is saved, or the work is taken back.
     *
     * @param project the project file
     * @param saved   what it holds
     * @return the works, that of the window with the smallest number last
     */
    public List<Project> take(Path project, Project saved) {
        List<Project> works = new ArrayList<>();
        numbers().filter(number -> number == claim.number() || ProjectClaim.isFree(project, number)).forEach(number -> {
            RecoveryFile file = number == claim.number() ? own : new RecoveryFile(project, number);
            Optional<Project> work = file.read(saved);
            if (work.isPresent()) {
                works.add(0, work.get());
                taken.add(file);
            }
        });
        return works;
    }

    /** Returns the file that this window writes. */
    public RecoveryFile own() {
        return own;
    }

    /** Removes the unsaved work, for it was saved or taken back. */
    public void discard() {
        own.discard();
        taken.forEach(RecoveryFile::discard);
        taken.clear();
    }

    /** Lets go of the project. */
    public void release() {
        claim.release();
    }
}
