package slopewright.rcp.internal.site;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import slopewright.evaluation.site.SiteNumber;
import slopewright.evaluation.site.TypicalGroup;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachType;
import slopewright.model.GlidePathAid;
import slopewright.model.Identified;
import slopewright.rcp.internal.Messages;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** The second step: who flies the approach, on what slope, and along which electronic glide path. */
final class AeroplanePage extends DraftPage {

    private Combo groups;
    private Button glidePath;

    AeroplanePage(SiteDraft draft) {
        super("page.aeroplanes", draft);
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(3).spacing(8, 10).applyTo(area);
        List<String> choices = new ArrayList<>(List.of(Messages.get("group.own")));
        TypicalGroup.ALL.forEach(group -> choices.add(group.types() + ": "
                + QuantityFormat.preferred().showWithUnit(group.eyeToWheelM(), Quantity.LENGTH)));
        groups = Answers.combo(area, Messages.get("site.group-choice"), choices, 0, this::choose);
        GridDataFactory.swtDefaults().span(2, 1).applyTo(groups);
        Label source = new Label(area, SWT.WRAP);
        source.setText(Messages.get("group.source"));
        GridDataFactory.fillDefaults().span(3, 1).hint(600, SWT.DEFAULT).applyTo(source);
        row(area, SiteNumber.EYE_TO_WHEEL);
        row(area, SiteNumber.EYE_ABOVE_SKIDS);
        row(area, SiteNumber.SLOPE);
        row(area, SiteNumber.EYE_TO_ANTENNA);
        row(area, SiteNumber.GLIDE_PATH_HEIGHT);
        glidePath = new Button(area, SWT.CHECK);
        glidePath.setText(Messages.get("site.glide-path"));
        glidePath.addListener(SWT.Selection, event -> {
            draft().site().setGlidePath(glidePath.getSelection());
            review();
        });
        GridDataFactory.swtDefaults().span(3, 1).applyTo(glidePath);
        Label note = new Label(area, SWT.WRAP);
        note.setText(Messages.get("site.glide-path-note"));
        GridDataFactory.fillDefaults().span(3, 1).hint(600, SWT.DEFAULT).applyTo(note);
        setControl(area);
        review();
    }

    @Override
    boolean isAsked(Identified element) {
        return element instanceof AeroplaneGroup || element instanceof GlidePathAid;
    }

    @Override
    void review() {
        super.review();
        enable(draft().site().hasGlidePath(), SiteNumber.EYE_TO_ANTENNA, SiteNumber.GLIDE_PATH_HEIGHT);
    }

    private void choose(int index) {
        if (index > 0) {
            TypicalGroup group = TypicalGroup.ALL.get(index - 1);
            draft().site().setGroupName(group.types());
            draft().type(SiteNumber.EYE_TO_WHEEL, QuantityFormat.preferred().show(group.eyeToWheelM(), Quantity.LENGTH));
            reload();
        }
        review();
    }

    @Override
    public void setVisible(boolean visible) {
        if (visible) {
            boolean runway = !draft().site().isHelipad();
            groups.setEnabled(runway);
            glidePath.setEnabled(runway && draft().site().approach() != ApproachType.VISUAL);
            if (!glidePath.getEnabled()) {
                draft().site().setGlidePath(false);
            }
            glidePath.setSelection(draft().site().hasGlidePath());
            reload();
            review();
        }
        super.setVisible(visible);
    }
}
