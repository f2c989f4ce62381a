package slopewright.report.handover;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;
import slopewright.model.Project;
import slopewright.model.io.AtomicFile;
import slopewright.report.ReportException;
import slopewright.siting.SitingException;

/** Writes files of a project into a folder, each whole or not at all; a file that is there already stays unless it may be replaced. */
public final class Handover {

    /** How one file went. */
    public enum State {
        /** It was written. */
        WRITTEN,
        /** It was there already and was left alone. */
        KEPT,
        /** It could not be written. */
        FAILED
    }

    /**
     * What became of one file.
     *
     * @param deliverable what it is
     * @param file        where it is or would be
     * @param state       how it went
     * @param reason      why it could not be written; empty where it was
     */
    public record Entry(HandoverFile deliverable, Path file, State state, Optional<Message> reason) {
    }

    /** Hears how it goes, and may end it. */
    public interface Progress {

        /**
         * The next file is begun.
         *
         * @param next what it is
         * @return whether it is wanted; nothing more is written where it is not
         */
        boolean goOn(HandoverFile next);
    }

    private Handover() {
    }

    /**
     * Writes files.
     *
     * @param project  the project, not changed
     * @param wanted   what is written
     * @param folder   where; made where it is not there
     * @param options  date and paper
     * @param replaced names of files that may be replaced
     * @param progress hears how it goes
     * @return what became of each file that was begun
     * @throws ReportException where the folder cannot be made
     */
    public static List<Entry> write(Project project, List<HandoverFile> wanted, Path folder, HandoverOptions options, Set<String> replaced,
            Progress progress) throws ReportException {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new ReportException(Message.said("document.folder", folder, e), e);
        }
        List<Entry> entries = new ArrayList<>();
        HandoverSource source = new HandoverSource(project);
        for (HandoverFile wantedFile : wanted) {
            if (!progress.goOn(wantedFile)) {
                break;
            }
            Path file = folder.resolve(wantedFile.fileName());
            boolean replace = replaced.contains(wantedFile.fileName());
            entries.add(!replace && Files.exists(file) ? new Entry(wantedFile, file, State.KEPT, Optional.empty())
                    : write(source, wantedFile, file, options, replace));
        }
        return entries;
    }

    private static Entry write(HandoverSource source, HandoverFile wanted, Path file, HandoverOptions options, boolean replace) {
        try {
            byte[] bytes = wanted.writer().write(source, options);
            if (replace) {
                AtomicFile.replace(file, bytes);
            } else {
                AtomicFile.create(file, bytes);
            }
            return new Entry(wanted, file, State.WRITTEN, Optional.empty());
        } catch (FileAlreadyExistsException e) {
            return new Entry(wanted, file, State.KEPT, Optional.empty());
        } catch (IOException e) {
            return new Entry(wanted, file, State.FAILED, Optional.of(Message.said("document.file", file, e)));
        } catch (ReportException | SitingException | IllegalArgumentException e) {
            return new Entry(wanted, file, State.FAILED, Optional.of(Reasoned.of(e)));
        }
    }
}
