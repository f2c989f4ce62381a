package slopewright.ui.review.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Tries options out one after the other in the background. */
public final class OptionTrial {

    /** Hears how it goes, on the user interface thread. */
    public interface Listener {

        /** One more was tried out. */
        void advanced(int done, int of);

        /** All were tried out. */
        void ended(List<ComparedOption> found);
    }

    private final Display display;
    private final Listener listener;
    private Job job;
    private int number;

    /** Makes one that has nothing to try out yet. */
    public OptionTrial(Display display, Listener listener) {
        this.display = display;
        this.listener = listener;
    }

    /** Returns whether one is on its way. */
    public boolean isRunning() {
        return job != null;
    }

    /** Starts over with other options; what was on its way is given up. */
    public void start(List<Supplier<ComparedOption>> options) {
        cancel();
        int mine = number;
        job = Job.create(Messages.get("comparison.job"), (IProgressMonitor monitor) -> {
            List<ComparedOption> found = new ArrayList<>();
            monitor.beginTask(Messages.get("comparison.job"), options.size());
            for (Supplier<ComparedOption> option : options) {
                if (monitor.isCanceled()) {
                    return Status.CANCEL_STATUS;
                }
                found.add(option.get());
                monitor.worked(1);
                int done = found.size();
                deliver(mine, () -> listener.advanced(done, options.size()));
            }
            deliver(mine, () -> {
                job = null;
                listener.ended(found);
            });
            return Status.OK_STATUS;
        });
        job.schedule();
    }

    private void deliver(int mine, Runnable what) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (mine == number) {
                    what.run();
                }
            });
        }
    }

    /** Gives up what is on its way; nothing of it is delivered any more. */
    public void cancel() {
        number++;
        if (job != null) {
            job.cancel();
            job = null;
        }
    }
}
