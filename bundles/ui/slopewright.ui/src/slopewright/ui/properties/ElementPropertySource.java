package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertySource2;
import org.eclipse.ui.views.properties.PropertyDescriptor;

import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.edit.RecordedEdit;
import slopewright.edit.SetAttribute;
import slopewright.edit.SetReferences;
import slopewright.evaluation.ReadBacks;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Projects;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.units.QuantityFormat;

/**
 * The attributes of one element for the property sheet, each with its unit, in groups, followed by what the aid gives as it stands, by
 * the parts that belong to the element alone, and by what the rules say about it. Every change goes through the history of the
 * element's document.
 */
public final class ElementPropertySource implements IPropertySource2 {

    private final Identified element;
    private final QuantityFormat format;
    private final Map<Object, Field> fields = new LinkedHashMap<>();
    private final Map<Object, String> texts = new LinkedHashMap<>();
    private final List<IPropertyDescriptor> descriptors = new ArrayList<>();

    /**
     * Makes the source of an element with the units that the user prefers.
     *
     * @param element the element; without an open document it is shown and cannot be changed
     */
    public ElementPropertySource(Identified element) {
        this(element, QuantityFormat.preferred());
    }

    /**
     * Makes the source of an element.
     *
     * @param element the element
     * @param format  how numbers are shown
     */
    public ElementPropertySource(Identified element, QuantityFormat format) {
        this.element = element;
        this.format = format;
        boolean editable = ProjectDocument.of(element).isPresent();
        for (EStructuralFeature feature : element.eClass().getEAllStructuralFeatures()) {
            if (isShown(feature)) {
                add(Field.of(element, AttributeInfo.of(element.eClass(), feature), format), editable);
            }
        }
        addReadOnly("id", AttributeInfo.classLabel(element.eClass()), "Id", String.valueOf(element.getId()),
                PropertyTexts.get("id.help"));
        Projects.project(element).ifPresent(this::addReadBack);
        if (element instanceof ApproachAid aid) {
            AidFigures.of(aid, format).forEach(figure -> addReadOnly("figure " + figure.name(), PropertyTexts.get("group.derived"),
                    figure.name(), figure.text(), figure.why()));
        }
        if (element instanceof SurveyBlock block) {
            PointFigures.of(block).forEach(figure -> addReadOnly("point " + figure.name(), PropertyTexts.get("group.point"),
                    figure.name(), figure.text(), figure.why()));
        }
        for (ElementParts.Part part : ElementParts.of(element)) {
            for (EStructuralFeature feature : part.element().eClass().getEAllStructuralFeatures()) {
                if (isShown(feature)) {
                    add(Field.of(part.element(), AttributeInfo.of(part.element().eClass(), feature), format)
                            .in(ElementParts.id(part.element(), feature), part.group()), editable);
                }
            }
        }
        addOutcomes();
    }

    private void add(Field field, boolean editable) {
        fields.put(field.id(), field);
        descriptors.add(field.descriptor(editable));
    }

    private static boolean isShown(EStructuralFeature feature) {
        return feature.isChangeable() && (feature instanceof EAttribute attribute && !attribute.isID() && !attribute.isMany()
                || feature instanceof EReference reference && !reference.isContainment());
    }

    private void addReadBack(Project project) {
        ReadBacks.holder(element).ifPresent(holder -> {
            ReadBack readBack = ReadBacks.byElement(project).get(holder.getId());
            String state = "readBack." + ReadBacks.state(project, holder).name().toLowerCase(Locale.ROOT);
            addReadOnly("readBack", AttributeInfo.classLabel(element.eClass()), PropertyTexts.get("readBack"), readBack == null
                    ? PropertyTexts.get(state) : PropertyTexts.get(state, readBack.getPerson(), readBack.getDate()),
                    PropertyTexts.get("readBack.help"));
        });
    }

    private void addOutcomes() {
        Optional<ProjectDocument> document = ProjectDocument.of(element);
        String older = document.flatMap(ProjectDocument::currentResult).isPresent() ? "" : " " + PropertyTexts.get("older");
        List<Outcome> own = document.flatMap(ProjectDocument::lastResult).map(result -> result.outcomes().stream()
                .filter(outcome -> Objects.equals(outcome.elementId(), element.getId()))
                .filter(outcome -> outcome.verdict() != Verdict.NOT_APPLICABLE).sorted(OutcomeTexts.worstFirst()).toList())
                .orElse(List.of());
        int number = 0;
        for (Outcome outcome : own) {
            String why = MessageTexts.of(outcome.explanation()) + ElementParts.lines(OutcomeTexts.steps(outcome))
                    + outcome.citation().map(citation -> "\n" + MessageTexts.of(citation.text()) + " ("
                            + OutcomeTexts.provenance(outcome) + ")").orElse("");
            addReadOnly("outcome " + number++, PropertyTexts.get("group.rules"), outcome.rule() + " " + MessageTexts.of(outcome.title()),
                    OutcomeTexts.verdict(outcome) + (outcome.toConfirm() ? ", " + PropertyTexts.get("toConfirm") : "") + older, why);
        }
    }

    private void addReadOnly(String id, String group, String name, String text, String why) {
        PropertyDescriptor descriptor = new PropertyDescriptor(id, name);
        descriptor.setCategory(group);
        descriptor.setDescription(why);
        descriptor.setLabelProvider(new LabelProvider());
        descriptors.add(descriptor);
        texts.put(id, text);
    }

    /** Returns the element. */
    public Identified element() {
        return element;
    }

    @Override
    public Object getEditableValue() {
        return element;
    }

    @Override
    public IPropertyDescriptor[] getPropertyDescriptors() {
        return descriptors.toArray(IPropertyDescriptor[]::new);
    }

    @Override
    public Object getPropertyValue(Object id) {
        Field field = fields.get(id);
        return field == null ? texts.get(id) : field.shown();
    }

    @Override
    public boolean isPropertySet(Object id) {
        Field field = fields.get(id);
        return field != null && field.element.eIsSet(field.info.feature());
    }

    @Override
    public boolean isPropertyResettable(Object id) {
        return fields.containsKey(id) && ProjectDocument.of(element).isPresent();
    }

    @Override
    public void resetPropertyValue(Object id) {
        Field field = fields.get(id);
        if (field != null && field.info.feature() instanceof EAttribute attribute) {
            perform(SetAttribute.of(field.element, attribute, null));
        } else if (field != null) {
            perform(SetReferences.of(field.element, (EReference) field.info.feature(), List.of()));
        }
    }

    /**
     * Changes a value as the user typed or chose it. What cannot be understood or makes no sense changes nothing; the validator of the
     * descriptor gives the reason while the user types.
     */
    @Override
    public void setPropertyValue(Object id, Object value) {
        Field field = fields.get(id);
        if (field != null && !Objects.equals(value, field.shown()) && field.fault(value) == null) {
            perform(field.edit(value));
        }
    }

    private void perform(RecordedEdit edit) {
        ProjectDocument.of(element).ifPresent(document -> document.history().perform(edit));
    }

    /** Returns the format in which numbers are shown. */
    public QuantityFormat format() {
        return format;
    }
}
