package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.resource.ImageDescriptor;

import slopewright.edit.AddChild;
import slopewright.edit.Compound;
import slopewright.edit.RecordedEdit;
import slopewright.edit.RemoveElement;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.Identified;
import slopewright.model.Inspection;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Projects;
import slopewright.ui.document.ProjectDocument;

/** Adds a part to the element that the property sheet shows, or removes one; offered where it can be done. */
final class SheetAction extends Action {

    private final Function<Identified, List<RecordedEdit>> edits;
    private final boolean frequent;
    private Optional<Identified> element = Optional.empty();

    private SheetAction(String key, String image, Function<Identified, List<RecordedEdit>> edits) {
        super(PropertyTexts.get(key));
        this.edits = edits;
        this.frequent = !image.isEmpty();
        if (frequent) {
            setToolTipText(PropertyTexts.get(key + ".tip"));
            setImageDescriptor(ImageDescriptor.createFromURL(SheetAction.class.getResource("/icons/" + image + ".svg")));
        }
        setEnabled(false);
    }

    static List<SheetAction> all() {
        return List.of(new SheetAction("sheet.addMeasured", "add-measured", SheetAction::addMeasured),
                new SheetAction("sheet.addInspection", "add-inspection", SheetAction::addInspection),
                new SheetAction("sheet.addCircuit", "", SheetAction::addCircuit),
                new SheetAction("sheet.addDirection", "", FieldActions::addDirection),
                new SheetAction("sheet.equip", "", FieldActions::equip),
                new SheetAction("sheet.setToDescent", "", FieldActions::setToDescent),
                new SheetAction("sheet.addDescent", "", FieldActions::addDescent),
                new SheetAction("sheet.removeDescent", "", FieldActions::removeDescent),
                new SheetAction("sheet.addBrightness", "", FieldActions::addBrightness),
                new SheetAction("sheet.removeBrightness", "", FieldActions::removeBrightness),
                new SheetAction("sheet.removeMeasured", "", SheetAction::removeMeasured),
                new SheetAction("sheet.removeInspection", "", SheetAction::removeInspection));
    }

    /** Returns whether it stands in the tool bar too. */
    boolean isFrequent() {
        return frequent;
    }

    /** Says which element is shown. */
    void offer(Optional<Identified> shown) {
        element = shown.filter(selected -> ProjectDocument.of(selected).isPresent());
        setEnabled(element.filter(selected -> !edits.apply(selected).isEmpty()).isPresent());
    }

    @Override
    public void run() {
        element.ifPresent(target -> {
            List<RecordedEdit> parts = edits.apply(target);
            if (!parts.isEmpty()) {
                ProjectDocument.of(target).ifPresent(document -> document.history().perform(Compound.of(getText(), parts)));
            }
        });
    }

    private static List<LightUnit> units(Identified element) {
        if (element instanceof LightUnit unit) {
            return List.of(unit);
        }
        return element instanceof ApproachAid aid ? aid.getUnits() : List.of();
    }

    private static List<RecordedEdit> addMeasured(Identified element) {
        List<RecordedEdit> edits = new ArrayList<>();
        for (LightUnit unit : units(element)) {
            if (unit.getMeasured() == null) {
                MeasuredUnit measured = SlopewrightFactory.eINSTANCE.createMeasuredUnit();
                edits.add(AddChild.of(unit, Literals.LIGHT_UNIT__MEASURED, measured));
            }
        }
        return edits;
    }

    private static List<RecordedEdit> removeMeasured(Identified element) {
        return units(element).stream().map(LightUnit::getMeasured).filter(measured -> measured != null).map(SheetAction::removal).toList();
    }

    private static RecordedEdit removal(Identified part) {
        return RemoveElement.of(part);
    }

    private static List<RecordedEdit> addInspection(Identified element) {
        Inspection inspection = SlopewrightFactory.eINSTANCE.createInspection();
        return Projects.aid(element).map(aid -> List.<RecordedEdit>of(AddChild.of(aid, Literals.APPROACH_AID__INSPECTIONS, inspection)))
                .orElse(List.of());
    }

    private static List<RecordedEdit> removeInspection(Identified element) {
        List<Inspection> all = Projects.aid(element).<List<Inspection>>map(ApproachAid::getInspections).orElse(List.of());
        return all.isEmpty() ? List.of() : List.of(removal(all.get(all.size() - 1)));
    }

    private static List<RecordedEdit> addCircuit(Identified element) {
        Optional<Aerodrome> aerodrome = element instanceof Project project ? Optional.ofNullable(project.getAerodrome()) : Optional.empty();
        Circuit circuit = SlopewrightFactory.eINSTANCE.createCircuit();
        return aerodrome.map(parent -> List.<RecordedEdit>of(AddChild.of(parent, Literals.AERODROME__CIRCUITS, circuit))).orElse(List.of());
    }
}
