package slopewright.ui.internal;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Display;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;

/**
 * Checks copies of a project in the background. The latest request wins: a result that is overtaken by a newer request is dropped.
 * Requests are made, and results delivered, on the user interface thread.
 */
public final class BackgroundCheck {

    /** How long a request waits for the next edit, milliseconds. */
    public static final int DEBOUNCE_MS = 200;

    private record Snapshot(long number, Project project, Optional<RecoveryFile.Slot> recovery) {
    }

    private final Display display;
    private final Consumer<CheckResult> results;
    private final Consumer<String> problems;
    private final AtomicReference<Snapshot> next = new AtomicReference<>();
    private final Job job = Job.create("Check the project", this::run);
    private Optional<Runnable> waiting = Optional.empty();
    private long wanted;
    private long delivered;
    private volatile boolean disposed;

    /**
     * Makes a checker.
     *
     * @param display  the display on whose thread it lives
     * @param results  receives each result that is still of interest
     * @param problems receives the reason where a project can not be checked
     */
    public BackgroundCheck(Display display, Consumer<CheckResult> results, Consumer<String> problems) {
        this.display = display;
        this.results = results;
        this.problems = problems;
        job.setSystem(true);
        job.setPriority(Job.SHORT);
    }

    /** Asks for a check when no further request has come for a short while. */
    public void requestSoon(Project project, Supplier<Optional<RecoveryFile>> recovery) {
        wanted++;
        stopWaiting();
        Runnable later = () -> {
            if (!disposed) {
                request(project, recovery.get());
            }
        };
        waiting = Optional.of(later);
        display.timerExec(DEBOUNCE_MS, later);
    }

    /**
     * Asks for a check now.
     *
     * @param project  copied before this returns
     * @param recovery where the copy is kept against a crash, empty where it need not be
     */
    public void request(Project project, Optional<RecoveryFile> recovery) {
        wanted++;
        next.set(new Snapshot(wanted, EcoreUtil.copy(project), recovery.map(RecoveryFile::slot)));
        job.schedule();
    }

    /** Returns whether a result is on its way. */
    public boolean isPending() {
        return !disposed && wanted != delivered;
    }

    /** Ends the checker; a run that has begun delivers nothing any more. */
    public void dispose() {
        disposed = true;
        if (!display.isDisposed()) {
            stopWaiting();
        }
        next.set(null);
        job.cancel();
    }

    private void stopWaiting() {
        waiting.ifPresent(later -> display.timerExec(-1, later));
    }

    private IStatus run(IProgressMonitor monitor) {
        Snapshot snapshot = next.getAndSet(null);
        if (snapshot == null || disposed || monitor.isCanceled()) {
            return Status.CANCEL_STATUS;
        }
        snapshot.recovery().ifPresent(slot -> slot.write(ProjectFile.bytes(snapshot.project())));
        try {
            CheckResult result = Checks.run(snapshot.project(), Optional.empty());
            deliver(snapshot, () -> results.accept(result));
        } catch (IllegalArgumentException e) {
            deliver(snapshot, () -> problems.accept(e.getMessage()));
        } catch (RuntimeException e) {
            deliver(snapshot, () -> problems.accept("a rule failed: " + e));
            return new Status(IStatus.ERROR, "slopewright.ui", "The project could not be checked", e);
        }
        return Status.OK_STATUS;
    }

    private void deliver(Snapshot snapshot, Runnable delivery) {
        if (disposed || display.isDisposed()) {
            return;
        }
        display.asyncExec(() -> {
            if (!disposed && snapshot.number() == wanted) {
                delivered = wanted;
                delivery.run();
            }
        });
    }
}
