package slopewright.ui.profile;

import java.util.Optional;
import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.part.ViewPart;

import slopewright.drawing.landing.DirectionScene;
import slopewright.edit.TakeDirection;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.model.ApproachAid;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.profile.internal.directions.DirectionsPage;
import slopewright.ui.profile.internal.section.EmptyPage;
import slopewright.ui.theme.ScreenTheme;

/** Which landing directions round the helipad of the chosen aid are clear, and from which slope; one of them is taken by a button. */
public final class DirectionsView extends ViewPart {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.profile.directions";

    private DocumentFollower follower;
    private Composite root;
    private StackLayout stack;
    private EmptyPage empty;
    private DirectionsPage page;
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
    public void createPartControl(Composite parent) {
        root = new Composite(parent, SWT.NONE);
        stack = new StackLayout();
        root.setLayout(stack);
        empty = new EmptyPage(root);
        page = new DirectionsPage(root, this::take);
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
        problem.ifPresent(text -> empty.say(text, () -> follower.editor().ifPresent(getSite().getPage()::activate)));
        Control top = problem.isPresent() ? empty.control() : page.control();
        if (stack.topControl != top) {
            stack.topControl = top;
            root.layout(true);
        }
    }

    private Optional<String> problem(ApproachAid aid) {
        if (Projects.helipad(aid).isEmpty()) {
            return Optional.of(Messages.get("directions.empty.helipad", Projects.label(aid)));
        }
        Attempt<AidEvaluation> evaluation = document.orElseThrow().evaluation(aid);
        return evaluation.value().isPresent() ? page.follow(evaluation.value().get()) : evaluation.reason().map(MessageTexts::of);
    }

    /** Takes a direction, one step of undo. */
    private void take(DirectionScene.Chosen chosen) {
        document.flatMap(open -> open.viewState().aid()).ifPresent(aid -> {
            try {
                AidEvaluation evaluation = document.orElseThrow().evaluation(aid).orThrow();
                document.orElseThrow().history().perform(TakeDirection.of(aid, evaluation.rules(), chosen.trueDeg(), chosen.slopeDeg()));
            } catch (SitingException e) {
                empty.say(MessageTexts.of(e.reason()), this::restate);
                stack.topControl = empty.control();
                root.layout(true);
            }
        });
    }

    /** Returns what is shown where there is an aid at a helipad. */
    public DirectionsPage page() {
        return page;
    }

    /** Returns what is said where there is no chart, empty where there is one. */
    public Optional<String> explanation() {
        return stack.topControl == empty.control() ? Optional.of(empty.text()) : Optional.empty();
    }

    @Override
    public void setFocus() {
        (stack.topControl == page.control() ? page.chart() : empty.control()).setFocus();
    }

    @Override
    public void dispose() {
        ScreenTheme.removeListener(restate);
        document.ifPresent(open -> open.viewState().removeListener(restate));
        if (follower != null) {
            follower.dispose();
        }
        super.dispose();
    }
}
