package slopewright.ui.profile.internal.section;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachAid;
import slopewright.model.util.Projects;
import slopewright.ui.MessageTexts;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.theme.TypeScale;

/** The choices above a section: the aid, the aeroplanes whose wheels are drawn, and how much heights are exaggerated. */
public final class SectionBar {

    private static final double[] FACTORS = {1, 2, 5, 10, 20, 50};
    private static final int AID_WIDTH = 220;
    private static final int GROUP_WIDTH = 190;
    private static final int FACTOR_WIDTH = 150;

    private final Composite bar;
    private final Combo aids;
    private final Combo groups;
    private final Combo factors;
    private List<ApproachAid> shownAids = List.of();
    private List<AeroplaneGroup> shownGroups = List.of();

    /**
     * Makes the choices.
     *
     * @param parent where they stand
     * @param aid    is told which aid is chosen
     * @param group  is told which aeroplanes are chosen
     * @param factor is told the exaggeration; empty for one that fills the window
     */
    public SectionBar(Composite parent, Consumer<ApproachAid> aid, Consumer<AeroplaneGroup> group, Consumer<OptionalDouble> factor) {
        bar = new Composite(parent, SWT.NONE);
        RowLayout layout = new RowLayout();
        layout.center = true;
        layout.spacing = 8;
        layout.marginTop = 2;
        layout.marginBottom = 2;
        bar.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        aids = combo("section.aid", AID_WIDTH);
        aids.addListener(SWT.Selection, event -> aid.accept(shownAids.get(aids.getSelectionIndex())));
        groups = combo("section.aeroplanes", GROUP_WIDTH);
        groups.addListener(SWT.Selection, event -> group.accept(shownGroups.get(groups.getSelectionIndex())));
        factors = combo("section.exaggeration", FACTOR_WIDTH);
        factors.add(Messages.get("section.exaggeration.fit"));
        for (double exaggeration : FACTORS) {
            factors.add(Messages.get("section.exaggeration.factor", String.valueOf(Math.round(exaggeration))));
        }
        factors.select(0);
        factors.addListener(SWT.Selection, event -> factor.accept(factors.getSelectionIndex() == 0 ? OptionalDouble.empty()
                : OptionalDouble.of(FACTORS[factors.getSelectionIndex() - 1])));
    }

    private Combo combo(String key, int width) {
        Combo combo = new Combo(bar, SWT.READ_ONLY);
        combo.setLayoutData(new RowData(TypeScale.px(width), SWT.DEFAULT));
        combo.setToolTipText(Messages.get(key));
        combo.getAccessible().addAccessibleListener(new AccessibleAdapter() {

            @Override
            public void getName(AccessibleEvent event) {
                event.result = Messages.get(key);
            }
        });
        return combo;
    }

    /** Shows what can be chosen and what is. */
    public void update(SectionSource source) {
        List<ApproachAid> newAids = source.aids();
        fill(aids, newAids.stream().map(SectionBar::name).toList(), source.aid().map(newAids::indexOf).orElse(-1));
        shownAids = newAids;
        List<AeroplaneGroup> newGroups = source.groups();
        boolean none = newGroups.isEmpty();
        List<String> names = none ? List.of(Messages.get("section.aeroplanes.none")) : newGroups.stream().map(MessageTexts::label).toList();
        fill(groups, names, none ? 0 : source.aeroplanes().map(newGroups::indexOf).orElse(-1));
        groups.setEnabled(!none);
        shownGroups = newGroups;
    }

    private static String name(ApproachAid aid) {
        String host = Projects.host(aid).map(MessageTexts::label).orElse("");
        String own = MessageTexts.label(aid);
        return host.isEmpty() || own.contains(host) ? own : own + "  (" + host + ")";
    }

    private static void fill(Combo combo, List<String> items, int selected) {
        if (!List.of(combo.getItems()).equals(items)) {
            combo.setItems(items.toArray(String[]::new));
        }
        if (selected < 0) {
            combo.deselectAll();
        } else if (combo.getSelectionIndex() != selected) {
            combo.select(selected);
        }
    }

    /** Returns the choice of the aid. */
    public Combo aids() {
        return aids;
    }

    /** Returns the choice of the aeroplanes. */
    public Combo groups() {
        return groups;
    }

    /** Returns the choice of the exaggeration. */
    public Combo factors() {
        return factors;
    }
}
