package slopewright.ui.profile;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.handlers.IHandlerService;

import slopewright.ui.LateView;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.profile.internal.pilot.PilotPage;
import slopewright.ui.profile.internal.section.EmptyPage;
import slopewright.ui.theme.ScreenTheme;

/**
 * What the pilot sees of the chosen aid from the eye that the views of the document share, and along an approach that is flown. The
 * lights flash and pulsate in time while the view is seen.
 */
public final class PilotView extends LateView {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.profile.pilot";

    private static final String OPEN_PROJECT = "slopewright.rcp.openProject";
    private static final int TICK_MS = 50;
    private static final double LONGEST_TICK_S = 0.25;

    private DocumentFollower follower;
    private Composite root;
    private StackLayout stack;
    private EmptyPage empty;
    private PilotPage page;
    private Optional<ProjectDocument> document = Optional.empty();
    private boolean stale;
    private boolean ticking;
    private long lastTick;
    private final Runnable tick = this::tick;
    private final Runnable restate = this::restate;
    private final Runnable looked = this::looked;
    private final IPropertyChangeListener preferences = event -> restate();

    private final class Follow implements DocumentListener {

        @Override
        public void changed(Set<String> elementIds) {
            restate();
        }

        @Override
        public void pointsRead() {
            restate();
        }
    }

    @Override
    protected void fill(Composite parent) {
        root = new Composite(parent, SWT.NONE);
        stack = new StackLayout();
        root.setLayout(stack);
        empty = new EmptyPage(root);
        page = new PilotPage(root, this::keepTime);
        root.addListener(SWT.Paint, event -> refreshStale());
        page.canvas().control().addListener(SWT.Paint, event -> {
            refreshStale();
            keepTime();
        });
        ScreenTheme.addListener(restate);
        Preferences.store().addPropertyChangeListener(preferences);
        follower = new DocumentFollower(getSite().getPage(), new Follow(), this::switched);
        switched(follower.document());
    }

    private void switched(Optional<ProjectDocument> newDocument) {
        document.ifPresent(open -> open.viewState().removeListener(looked));
        document = newDocument;
        document.ifPresent(open -> open.viewState().addListener(looked));
        restate();
    }

    /** Reads everything anew, now where it is seen, else before it is seen next. */
    private void restate() {
        stale = true;
        if (root != null && !root.isDisposed() && root.isVisible()) {
            refreshStale();
        }
    }

    /** Looks from another place; at another aid everything is read anew. */
    private void looked() {
        if (stale || root.isDisposed() || !root.isVisible() || !page.isShowing(document.flatMap(open -> open.viewState().aid()))) {
            restate();
        } else {
            page.look();
        }
    }

    private void refreshStale() {
        if (!stale) {
            return;
        }
        stale = false;
        Optional<String> problem = page.follow(document);
        Composite top = problem.isEmpty() && page.isShowing() ? page.control() : empty.control();
        if (top == empty.control()) {
            explain(problem);
        }
        if (stack.topControl != top) {
            stack.topControl = top;
            root.layout(true);
        }
        keepTime();
    }

    private void explain(Optional<String> problem) {
        if (document.isEmpty()) {
            empty.say(Messages.get("pilot.empty.project"), this::openProject);
        } else if (problem.isEmpty()) {
            empty.say(Messages.get("pilot.empty.aid"), () -> follower.editor().ifPresent(getSite().getPage()::activate));
        } else {
            String id = document.flatMap(open -> open.viewState().aid()).map(aid -> aid.getId()).orElse("");
            empty.say(Messages.get("pilot.empty.layout", problem.get()), () -> follower.reveal(id));
        }
    }

    private void openProject() {
        try {
            getSite().getService(IHandlerService.class).executeCommand(OPEN_PROJECT, null);
        } catch (CommandException e) {
            ILog.of(PilotView.class).error(e.getMessage(), e);
        }
    }

    /** Starts the timer where something moves and is seen; it ends by itself where nothing does. */
    private void keepTime() {
        if (!ticking && isMoving()) {
            ticking = true;
            lastTick = System.nanoTime();
            root.getDisplay().timerExec(TICK_MS, tick);
        }
    }

    private boolean isMoving() {
        return root != null && !root.isDisposed() && stack.topControl == page.control() && page.canvas().control().isVisible()
                && page.isMoving();
    }

    private void tick() {
        ticking = false;
        if (isMoving()) {
            long now = System.nanoTime();
            double seconds = Math.min(LONGEST_TICK_S, (now - lastTick) / 1e9);
            lastTick = now;
            advance(seconds);
            if (isMoving()) {
                ticking = true;
                root.getDisplay().timerExec(TICK_MS, tick);
            }
        }
    }

    /**
     * Lets time go on, as the clock of the view does while it is seen.
     *
     * @param seconds the time that has passed
     */
    public void advance(double seconds) {
        page.advance(seconds);
    }

    /** Returns whether the timer runs. */
    public boolean isTicking() {
        return ticking;
    }

    /** Returns what is shown where there is an indicator. */
    public PilotPage page() {
        return page;
    }

    /** Returns what is said where there is nothing to see, empty where there is something. */
    public Optional<String> explanation() {
        return stack.topControl == empty.control() ? Optional.of(empty.text()) : Optional.empty();
    }

    /** Returns the words beside the picture, the meaning first. */
    public List<String> words() {
        return page.words();
    }

    @Override
    protected void focus() {
        if (stack.topControl == page.control()) {
            page.canvas().control().setFocus();
        } else {
            empty.focus();
        }
    }

    @Override
    public void dispose() {
        ScreenTheme.removeListener(restate);
        Preferences.store().removePropertyChangeListener(preferences);
        document.ifPresent(open -> open.viewState().removeListener(looked));
        if (follower != null) {
            follower.dispose();
        }
        super.dispose();
    }
}
