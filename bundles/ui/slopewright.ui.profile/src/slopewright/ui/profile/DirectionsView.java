package slopewright.ui.profile;

import java.util.Optional;
import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import slopewright.drawing.landing.DirectionScene;
import slopewright.edit.TakeDirection;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.ApproachAid;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.ui.LateView;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.profile.internal.directions.DirectionsPage;
import slopewright.ui.profile.internal.directions.DirectionsSearch;
import slopewright.ui.profile.internal.section.EmptyPage;
import slopewright.ui.theme.ScreenTheme;

/** Which landing directions round the helipad of the chosen aid are clear, and from which slope; one of them is taken by a button. */
public final class DirectionsView extends LateView {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.profile.directions";

    private DocumentFollower follower;
    private Composite root;
    private StackLayout stack;
    private EmptyPage empty;
    private DirectionsPage page;
    private DirectionsSearch search;
    private Optional<ProjectDocument> document = Optional.empty();
    private boolean stale = true;
    private final Runnable restate = this::restate;

    private final class Follow implements DocumentListener {

        @Override
        public void changed(Set<String> elementIds) {
            restate();
        }
    }

    @Override
    protected void fill(Composite parent) {
        root = new Composite(parent, SWT.NONE);
        stack = new StackLayout();
        root.setLayout(stack);
        empty = new EmptyPage(root);
        page = new DirectionsPage(root, this::take);
        search = new DirectionsSearch(parent.getDisplay());
        root.addListener(SWT.Paint, event -> refreshStale());
        page.chart().addListener(SWT.Paint, event -> refreshStale());
        ScreenTheme.addListener(restate);
        follower = new DocumentFollower(getSite().getPage(), new Follow(), this::switched);
        switched(follower.document());
    }

    private void switched(Optional<ProjectDocument> newDocument) {
        document.ifPresent(open -> open.viewState().removeListener(restate));
        document = newDocument;
        document.ifPresent(open -> open.viewState().addListener(restate));
        restate();
    }

    /** Reads everything anew, now where it is seen, else before it is seen next: looking all round is no small work. */
    private void restate() {
        stale = true;
        if (root != null && !root.isDisposed() && root.isVisible()) {
            refreshStale();
        }
    }

    private void refreshStale() {
        if (!stale) {
            return;
        }
        stale = false;
        Optional<ApproachAid> aid = document.flatMap(open -> open.viewState().aid());
        Optional<String> problem = aid.isEmpty() ? Optional.of(Messages.get("directions.empty.aid")) : problem(aid.get());
        if (problem.isPresent()) {
            refuse(problem.get());
        } else {
            top(page.control());
        }
    }

    private void refuse(String why) {
        search.stop();
        empty.say(why, () -> follower.editor().ifPresent(getSite().getPage()::activate));
        top(empty.control());
    }

    private void top(Control top) {
        if (stack.topControl != top) {
            stack.topControl = top;
            root.layout(true);
        }
    }

    private Optional<String> problem(ApproachAid aid) {
        if (Projects.helipad(aid).isEmpty()) {
            return Optional.of(Messages.get("directions.empty.helipad", MessageTexts.label(aid)));
        }
        Attempt<AidEvaluation> evaluation = document.orElseThrow().evaluation(aid);
        if (evaluation.value().isEmpty()) {
            return evaluation.reason().map(MessageTexts::of);
        }
        ProjectEvaluation snapshot = document.orElseThrow().snapshot();
        Optional<ApproachAid> copy = Ids.find(snapshot.project(), aid.getId()).filter(ApproachAid.class::isInstance)
                .map(ApproachAid.class::cast);
        page.look(evaluation.value().get());
        copy.ifPresent(on -> search.start(() -> DirectionsPage.search(snapshot.aid(on)), found -> found.value().ifPresentOrElse(page::show,
                () -> found.reason().map(MessageTexts::of).ifPresent(this::refuse))));
        return Optional.empty();
    }

    /** Takes a direction, one step of undo. */
    private void take(DirectionScene.Chosen chosen) {
        document.flatMap(open -> open.viewState().aid()).ifPresent(aid -> {
            try {
                AidEvaluation evaluation = document.orElseThrow().evaluation(aid).orThrow();
                document.orElseThrow().history().perform(TakeDirection.of(aid, evaluation.rules(), chosen.trueDeg(), chosen.slopeDeg()));
            } catch (SitingException e) {
                empty.say(MessageTexts.of(e.reason()), this::restate);
                top(empty.control());
            }
        });
    }

    /** Returns what is shown where there is an aid at a helipad. */
    public DirectionsPage page() {
        return page;
    }

    /** Returns whether it still looks for directions. */
    public boolean isLooking() {
        return search.isRunning();
    }

    /** Returns what is said where there is no chart, empty where there is one. */
    public Optional<String> explanation() {
        return stack.topControl == empty.control() ? Optional.of(empty.text()) : Optional.empty();
    }

    @Override
    protected void focus() {
        (stack.topControl == page.control() ? page.chart() : empty.control()).setFocus();
    }

    @Override
    public void dispose() {
        ScreenTheme.removeListener(restate);
        document.ifPresent(open -> open.viewState().removeListener(restate));
        if (follower != null) {
            search.stop();
            follower.dispose();
        }
        super.dispose();
    }
}
