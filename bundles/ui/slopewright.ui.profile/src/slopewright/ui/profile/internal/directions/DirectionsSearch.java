package slopewright.ui.profile.internal.directions;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

import slopewright.evaluation.Attempt;
import slopewright.evaluation.landing.LandingDirections;

/** Looks all round in the background; what was asked for last wins, and nothing else is delivered. */
public final class DirectionsSearch {

    private final Display display;
    private final Job job = Job.create("", (IProgressMonitor monitor) -> run());
    private final Object lock = new Object();
    private Optional<Request> next = Optional.empty();
    private long wanted;
    private long delivered;

    /** What is looked for, and who is told. */
    private record Request(long number, Supplier<LandingDirections> work, Consumer<Attempt<LandingDirections>> told) {
    }

    /**
     * Makes a search that delivers on the thread of a display.
     *
     * @param display the display
     */
    public DirectionsSearch(Display display) {
        this.display = display;
        job.setSystem(true);
        job.setPriority(Job.SHORT);
    }

    /**
     * Begins to look.
     *
     * @param work finds the directions on a copy of the project, or says why not by a {@code SitingException}
     * @param told is told on the thread of the display
     */
    public void start(Supplier<LandingDirections> work, Consumer<Attempt<LandingDirections>> told) {
        wanted++;
        synchronized (lock) {
            next = Optional.of(new Request(wanted, work, told));
        }
        job.schedule();
    }

    /** Leaves off; what is still found is not told. */
    public void stop() {
        wanted++;
        delivered = wanted;
        synchronized (lock) {
            next = Optional.empty();
        }
    }

    /** Returns whether something is still looked for. */
    public boolean isRunning() {
        return wanted != delivered;
    }

    private IStatus run() {
        Optional<Request> request;
        synchronized (lock) {
            request = next;
            next = Optional.empty();
        }
        request.ifPresent(asked -> {
            Attempt<LandingDirections> found = Attempt.of(asked.work()::get);
            if (!display.isDisposed()) {
                display.asyncExec(() -> deliver(asked, found));
            }
        });
        return Status.OK_STATUS;
    }

    private void deliver(Request asked, Attempt<LandingDirections> found) {
        if (asked.number() == wanted) {
            delivered = wanted;
            asked.told().accept(found);
        }
    }
}
