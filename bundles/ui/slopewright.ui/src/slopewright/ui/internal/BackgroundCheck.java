package slopewright.ui.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.edit.ProjectMirror;
import slopewright.edit.RecordedEdit;
import slopewright.evaluation.EvaluationCache;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.ui.MessageTexts;

/**
 * Checks a project in the background on a copy that follows its edits, and keeps unsaved work. The latest edit wins: a check that is
 * overtaken ends early and delivers nothing. Edits are reported, and results delivered, on the user interface thread; copy and cache
 * belong to the job.
 */
public final class BackgroundCheck {

    /** How long a check waits for the next edit, milliseconds. */
    public static final int DEBOUNCE_MS = 150;

    /** How long edits that follow each other may put it off that they are checked and kept, milliseconds. */
    private static final long MOST_PUT_OFF_MS = 1000;

    /** Unsaved work is written at most this share of the time. */
    private static final int PAUSE_FACTOR = 10;

    /** What has happened to the project since the job looked last. */
    private static final class News {

        private final List<ProjectMirror.State> states = new ArrayList<>();
        private final Set<String> ids = new HashSet<>();
        private Optional<RecoveryFile.Slot> recovery = Optional.empty();
        private long number;
        private boolean isCheckWanted;
        private Optional<Path> file = Optional.empty();
    }

    /** A change that is made on the copy, checked, and taken back. */
    private record Trial(long number, Function<Project, RecordedEdit> edit, Function<CheckResult, Runnable> answer) {
    }

    private final Display display;
    private final Consumer<CheckResult> results;
    private final Consumer<String> problems;
    private final Runnable progressed;
    private final Project project;
    private final Object lock = new Object();
    private final EvaluationCache cache = new EvaluationCache();
    private final Job job = Job.create("Check the project", this::run);
    private Optional<Runnable> waiting = Optional.empty();
    private Optional<ProjectMirror> mirror = Optional.empty();
    private News news = new News();
    private Optional<Trial> trial = Optional.empty();
    private volatile long tried;
    private long delivered;
    private long endedByUser = -1;
    private volatile long wanted;
    private volatile boolean disposed;
    private volatile int percent;
    private long writeAgainAt;
    private long askedSince;

    /** Who hears what of a check. */
    public record Listeners(Consumer<CheckResult> results, Consumer<String> problems, Runnable progressed) {
    }

    /**
     * Makes a checker.
     *
     * @param display the display on whose thread it lives
     * @param project the project, copied at the first edit or check, so that its window is painted first
     * @param listeners receive each result that is still of interest, the reason where a project cannot be checked, and that a running
     *                check has come further
     */
    public BackgroundCheck(Display display, Project project, Listeners listeners) {
        this.display = display;
        this.results = listeners.results();
        this.problems = listeners.problems();
        this.progressed = listeners.progressed();
        this.project = project;
        job.setSystem(true);
        job.setPriority(Job.SHORT);
    }

    /** Returns a cache for the thread of the user interface, which takes survey points from this one's. */
    public EvaluationCache cacheForWindow() {
        return cache.withoutReading();
    }

    /** Returns a cache for a copy of the project on another thread. */
    public EvaluationCache cacheForCopy() {
        return cache.forCopy();
    }

    /**
     * Takes over what an edit has touched; a check follows when {@link #requestSoon} is called.
     *
     * @param elements the elements that the edit has touched
     */
    public void touched(List<Identified> elements) {
        if (copyAtFirst()) {
            return;
        }
        List<ProjectMirror.State> states = ProjectMirror.states(project, elements);
        synchronized (lock) {
            news.states.addAll(states);
            elements.forEach(element -> news.ids.add(element.getId()));
        }
    }

    /** Copies the project where that was not done yet; returns whether it was done now, with all edits up to now in the copy. */
    private boolean copyAtFirst() {
        synchronized (lock) {
            boolean first = mirror.isEmpty();
            if (first) {
                mirror = Optional.of(new ProjectMirror(project));
            }
            return first;
        }
    }

    /** Says that the project belongs to another file from now on. */
    public void moved(Path file) {
        synchronized (lock) {
            news.file = Optional.of(file);
        }
        requestSoon(Optional::empty);
    }

    /** Asks for a check when no further request has come for a short while. */
    public void requestSoon(Supplier<Optional<RecoveryFile>> recovery) {
        wanted++;
        long now = System.currentTimeMillis();
        askedSince = waiting.isEmpty() ? now : askedSince;
        stopWaiting();
        Runnable later = () -> {
            waiting = Optional.empty();
            if (!disposed) {
                request(recovery.get());
            }
        };
        waiting = Optional.of(later);
        display.timerExec((int) Math.max(0, Math.min(DEBOUNCE_MS, askedSince + MOST_PUT_OFF_MS - now)), later);
    }

    /** Asks for the first check: it is on its way from now on, but nothing is copied for it before the window was painted. */
    public void requestWhenPainted(Supplier<Optional<RecoveryFile>> recovery) {
        wanted++;
        display.asyncExec(() -> {
            if (!disposed) {
                requestSoon(recovery);
            }
        });
    }

    /**
     * Asks for a check now.
     *
     * @param recovery where the work is kept against a crash, empty where it need not be
     */
    public void request(Optional<RecoveryFile> recovery) {
        wanted++;
        copyAtFirst();
        synchronized (lock) {
            news.recovery = recovery.map(RecoveryFile::slot);
            news.number = wanted;
            news.isCheckWanted = true;
        }
        percent = 0;
        job.schedule();
    }

    /**
     * Checks what a change would lead to, as if it had been made: on the copy, where it is taken back at once. One that cannot be made has
     * no result. A trial that waits gives way to a newer one; one that has begun is delivered.
     *
     * @param edit   makes the change for a copy of the project, in which elements have the ids that they have here
     * @param answer makes of the result what is run on the thread of the user interface, unless the trials were ended meanwhile
     */
    public void tryOut(Function<Project, RecordedEdit> edit, Function<CheckResult, Runnable> answer) {
        copyAtFirst();
        synchronized (lock) {
            trial = Optional.of(new Trial(tried, edit, answer));
        }
        job.schedule();
    }

    /** Ends trials: no result of one is delivered any more. */
    public void endTrials() {
        tried++;
        synchronized (lock) {
            trial = Optional.empty();
        }
    }

    /** Ends the running check; the last result stays, and the next edit asks for a new one. */
    public void stop() {
        endedByUser = wanted;
        wanted++;
        delivered = wanted;
        stopWaiting();
        progressed.run();
    }

    /** Returns whether the last check was ended before it was done. */
    public boolean isStopped() {
        return endedByUser >= 0 && endedByUser + 1 == wanted;
    }

    /** Returns whether a result is on its way. */
    public boolean isPending() {
        return !disposed && wanted != delivered;
    }

    /** Returns how far the running check has come, in per cent. */
    public int percent() {
        return percent;
    }

    /** Ends the checker; a run that has begun delivers nothing any more. */
    public void dispose() {
        disposed = true;
        if (!display.isDisposed()) {
            stopWaiting();
        }
        job.cancel();
    }

    private void stopWaiting() {
        waiting.ifPresent(later -> display.timerExec(-1, later));
        waiting = Optional.empty();
    }

    private IStatus run(IProgressMonitor monitor) {
        News taken;
        Optional<Trial> proposed;
        ProjectMirror copy;
        synchronized (lock) {
            taken = news;
            news = new News();
            proposed = trial;
            trial = Optional.empty();
            copy = mirror.orElseThrow();
        }
        if (disposed || monitor.isCanceled()) {
            return Status.CANCEL_STATUS;
        }
        IStatus status = Status.OK_STATUS;
        try {
            copy.follow(taken.states);
            taken.file.ifPresent(file -> ProjectFile.settle(copy.copy(), file));
            cache.forget(copy.copy(), taken.ids);
            taken.recovery.ifPresent(slot -> keep(slot, copy.copy()));
            if (taken.isCheckWanted) {
                long number = taken.number;
                Optional<CheckResult> result = Checks.run(copy.copy(), cache, (done, all) -> isWanted(number, done, all));
                result.ifPresent(found -> deliver(number, () -> results.accept(found)));
            }
            proposed.ifPresent(change -> tryOut(change, copy.copy()));
        } catch (IllegalArgumentException e) {
            deliver(taken.number, () -> problems.accept(MessageTexts.reason(e)));
        } catch (RuntimeException e) {
            deliver(taken.number, () -> problems.accept("a rule failed: " + e));
            status = new Status(IStatus.ERROR, "slopewright.ui", "The project could not be checked", e);
        }
        return status;
    }

    private void tryOut(Trial change, Project copy) {
        RecordedEdit edit;
        try {
            edit = change.edit().apply(copy);
            edit.execute();
        } catch (RuntimeException e) {
            ILog.get().info("A change that cannot be made was tried out", e);
            return;
        }
        cache.forget(copy, edit.touched());
        try {
            Checks.run(copy, cache, (done, all) -> isAsked(change)).map(change.answer()).ifPresent(answer -> display.asyncExec(() -> {
                if (isAsked(change)) {
                    answer.run();
                }
            }));
        } catch (IllegalArgumentException e) {
            ILog.get().info("A change after which nothing can be checked was tried out", e);
        } finally {
            edit.undo();
            cache.forget(copy, edit.touched());
        }
    }

    private boolean isAsked(Trial change) {
        return !disposed && !display.isDisposed() && change.number() == tried;
    }

    /** Writes unsaved work; where that takes long, later edits wait their turn. */
    private void keep(RecoveryFile.Slot slot, Project copy) {
        long begun = System.currentTimeMillis();
        if (begun < writeAgainAt) {
            synchronized (lock) {
                news.recovery = news.recovery.or(() -> Optional.of(slot));
            }
            job.schedule(writeAgainAt - begun);
            return;
        }
        try {
            slot.write(ProjectFile.bytes(copy));
        } catch (IllegalStateException e) {
            ILog.get().warn("Unsaved work cannot be kept", e);
        }
        long ended = System.currentTimeMillis();
        writeAgainAt = ended + PAUSE_FACTOR * (ended - begun);
    }

    private boolean isWanted(long number, int done, int all) {
        int now = 100 * done / all;
        if (now / 10 != percent / 10 && !display.isDisposed()) {
            display.asyncExec(() -> {
                if (!disposed && isPending()) {
                    progressed.run();
                }
            });
        }
        percent = now;
        return !disposed && number == wanted;
    }

    private void deliver(long number, Runnable delivery) {
        if (disposed || display.isDisposed()) {
            return;
        }
        display.asyncExec(() -> {
            if (!disposed && number == wanted) {
                delivered = wanted;
                delivery.run();
            }
        });
    }
}
