package slopewright.model.internal;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.XMLLoad;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMILoadImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

import slopewright.model.Identified;

/**
 * An XMI resource whose {@code xmi:id} is the id of the element, read without document type and external entities. The id belongs to
 * the element: taking it out of the resource leaves it alone, so that an undone removal brings back the same id.
 */
public final class ProjectResource extends XMIResourceImpl {

    /** So many bytes of a file at least are one element with its id. */
    private static final int BYTES_OF_AN_ELEMENT = 100;

    /** Whether a file is being read; meanwhile the map of ids holds what was read so far. */
    private boolean isReading;

    /** Whether an element of the file that was read has no id. */
    private boolean idIsMissing;

    /** What the file held when it was read or written last; null where it was not. */
    private SeenFile seen;

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
        getDefaultLoadOptions().put(XMLResource.OPTION_DEFER_ATTACHMENT, Boolean.TRUE);
        getDefaultSaveOptions().put(Resource.OPTION_LINE_DELIMITER, "\n");
        getDefaultSaveOptions().put(XMLResource.OPTION_ENCODING, "UTF-8");
    }

    @Override
    protected XMLLoad createXMLLoad() {
        return new XMILoadImpl(createXMLHelper()) {
            /** The reader of XML of this Java, without a search for another. */
            @Override
            protected SAXParser makeParser() throws ParserConfigurationException, SAXException {
                return SAXParserFactory.newDefaultInstance().newSAXParser();
            }

            @Override
            protected DefaultHandler makeDefaultHandler() {
                return new ProjectHandler(ProjectResource.this, helper, options);
            }
        };
    }

    @Override
    public void doLoad(InputStream in, Map<?, ?> options) throws IOException {
        isReading = true;
        idToEObjectMap = new HashMap<>(in.available() / BYTES_OF_AN_ELEMENT);
        try {
            super.doLoad(in, options);
        } finally {
            isReading = false;
        }
    }

    /** Returns what the file held when it was read or written last, empty where it was not. */
    public Optional<SeenFile> seen() {
        return Optional.ofNullable(seen);
    }

    /** Notes what the file held when it was read or written. */
    public void see(Optional<SeenFile> content) {
        seen = content.orElse(null);
    }

    /**
     * Notes that an element was read.
     *
     * @return false where another element had its id before
     */
    boolean isFirstOfItsId(Identified element) {
        return !isReading || idToEObjectMap.putIfAbsent(element.getId(), element) == null;
    }

    /** Notes that an element was read that has no id. */
    void isWithoutId(EObject element) {
        idIsMissing |= element instanceof Identified;
    }

    /** Returns whether an element that was read has no id. */
    public boolean isIdMissing() {
        return idIsMissing;
    }

    /** What is read is in the map of ids already, and is not looked through a second time for that. */
    @Override
    protected boolean isAttachedDetachedHelperRequired() {
        return !isReading && super.isAttachedDetachedHelperRequired();
    }

    @Override
    protected EObject getEObjectByID(String id) {
        return isReading ? idToEObjectMap.get(id) : super.getEObjectByID(id);
    }

    @Override
    public String getID(EObject element) {
        return element instanceof Identified identified ? identified.getId() : super.getID(element);
    }

    @Override
    public void setID(EObject element, String id) {
        if (!(element instanceof Identified identified)) {
            super.setID(element, id);
        } else if (id != null) {
            identified.setId(id);
        }
    }
}
