package slopewright.model.internal;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;

import slopewright.model.Identified;

/** An XMI resource whose {@code xmi:id} is the id of the element, read without document type and external entities. */
public final class ProjectResource extends XMIResourceImpl {

    /** Makes an empty resource. */
    public ProjectResource(URI uri) {
        super(uri);
        setEncoding("UTF-8");
        Map<String, Object> features = new HashMap<>();
        features.put("http://apache.org/xml/features/disallow-doctype-decl", Boolean.TRUE);
        features.put("http://xml.org/sax/features/external-general-entities", Boolean.FALSE);
        features.put("http://xml.org/sax/features/external-parameter-entities", Boolean.FALSE);
        features.put("http://apache.org/xml/features/nonvalidating/load-external-dtd", Boolean.FALSE);
        getDefaultLoadOptions().put(XMLResource.OPTION_PARSER_FEATURES, features);
        getDefaultLoadOptions().put(XMLResource.OPTION_DEFER_IDREF_RESOLUTION, Boolean.TRUE);
        getDefaultSaveOptions().put(Resource.OPTION_LINE_DELIMITER, "\n");
        getDefaultSaveOptions().put(XMLResource.OPTION_ENCODING, "UTF-8");
    }

    @Override
    public String getID(EObject element) {
        return element instanceof Identified identified ? identified.getId() : super.getID(element);
    }

    @Override
    public void setID(EObject element, String id) {
        if (element instanceof Identified identified) {
            identified.setId(id);
        }
        super.setID(element, id);
    }
}
