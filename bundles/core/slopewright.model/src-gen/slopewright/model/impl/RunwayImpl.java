/**
 */
package slopewright.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import slopewright.model.ProfilePoint;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Runway</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getDesignator <em>Designator</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getLengthM <em>Length M</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getWidthM <em>Width M</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getCodeNumber <em>Code Number</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getSurface <em>Surface</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getPaved <em>Paved</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getStripLengthM <em>Strip Length M</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getStripWidthM <em>Strip Width M</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getCentreLine <em>Centre Line</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getEnds <em>Ends</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getObjectFreeWidthM <em>Object Free Width M</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getObjectFreeSource <em>Object Free Source</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getOpenDataSource <em>Open Data Source</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getOpenDataLicence <em>Open Data Licence</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getOpenDataConfirmation <em>Open Data Confirmation</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getOpenDataConfirmationDate <em>Open Data Confirmation Date</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayImpl#getOpenDataConfirmationPerson <em>Open Data Confirmation Person</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RunwayImpl extends NamedImpl implements Runway {
	/**
	 * The default value of the '{@link #getDesignator() <em>Designator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignator()
	 * @generated
	 * @ordered
	 */
	protected static final String DESIGNATOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDesignator() <em>Designator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignator()
	 * @generated
	 * @ordered
	 */
	protected String designator = DESIGNATOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getLengthM() <em>Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLengthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double LENGTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLengthM() <em>Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLengthM()
	 * @generated
	 * @ordered
	 */
	protected Double lengthM = LENGTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidthM() <em>Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double WIDTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWidthM() <em>Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidthM()
	 * @generated
	 * @ordered
	 */
	protected Double widthM = WIDTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getCodeNumber() <em>Code Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCodeNumber()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CODE_NUMBER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCodeNumber() <em>Code Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCodeNumber()
	 * @generated
	 * @ordered
	 */
	protected Integer codeNumber = CODE_NUMBER_EDEFAULT;

	/**
	 * The default value of the '{@link #getSurface() <em>Surface</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSurface()
	 * @generated
	 * @ordered
	 */
	protected static final String SURFACE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSurface() <em>Surface</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSurface()
	 * @generated
	 * @ordered
	 */
	protected String surface = SURFACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPaved() <em>Paved</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaved()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean PAVED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPaved() <em>Paved</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaved()
	 * @generated
	 * @ordered
	 */
	protected Boolean paved = PAVED_EDEFAULT;

	/**
	 * The default value of the '{@link #getStripLengthM() <em>Strip Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStripLengthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double STRIP_LENGTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStripLengthM() <em>Strip Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStripLengthM()
	 * @generated
	 * @ordered
	 */
	protected Double stripLengthM = STRIP_LENGTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getStripWidthM() <em>Strip Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStripWidthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double STRIP_WIDTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStripWidthM() <em>Strip Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStripWidthM()
	 * @generated
	 * @ordered
	 */
	protected Double stripWidthM = STRIP_WIDTH_M_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCentreLine() <em>Centre Line</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCentreLine()
	 * @generated
	 * @ordered
	 */
	protected EList<ProfilePoint> centreLine;

	/**
	 * The cached value of the '{@link #getEnds() <em>Ends</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnds()
	 * @generated
	 * @ordered
	 */
	protected EList<RunwayEnd> ends;

	/**
	 * The default value of the '{@link #getObjectFreeWidthM() <em>Object Free Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getObjectFreeWidthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double OBJECT_FREE_WIDTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getObjectFreeWidthM() <em>Object Free Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getObjectFreeWidthM()
	 * @generated
	 * @ordered
	 */
	protected Double objectFreeWidthM = OBJECT_FREE_WIDTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getObjectFreeSource() <em>Object Free Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getObjectFreeSource()
	 * @generated
	 * @ordered
	 */
	protected static final String OBJECT_FREE_SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getObjectFreeSource() <em>Object Free Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getObjectFreeSource()
	 * @generated
	 * @ordered
	 */
	protected String objectFreeSource = OBJECT_FREE_SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpenDataSource() <em>Open Data Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenDataSource()
	 * @generated
	 * @ordered
	 */
	protected static final String OPEN_DATA_SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpenDataSource() <em>Open Data Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenDataSource()
	 * @generated
	 * @ordered
	 */
	protected String openDataSource = OPEN_DATA_SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpenDataLicence() <em>Open Data Licence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenDataLicence()
	 * @generated
	 * @ordered
	 */
	protected static final String OPEN_DATA_LICENCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpenDataLicence() <em>Open Data Licence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenDataLicence()
	 * @generated
	 * @ordered
	 */
	protected String openDataLicence = OPEN_DATA_LICENCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpenDataConfirmation() <em>Open Data Confirmation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenDataConfirmation()
	 * @generated
	 * @ordered
	 */
	protected static final String OPEN_DATA_CONFIRMATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpenDataConfirmation() <em>Open Data Confirmation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenDataConfirmation()
	 * @generated
	 * @ordered
	 */
	protected String openDataConfirmation = OPEN_DATA_CONFIRMATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpenDataConfirmationDate() <em>Open Data Confirmation Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenDataConfirmationDate()
	 * @generated
	 * @ordered
	 */
	protected static final String OPEN_DATA_CONFIRMATION_DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpenDataConfirmationDate() <em>Open Data Confirmation Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenDataConfirmationDate()
	 * @generated
	 * @ordered
	 */
	protected String openDataConfirmationDate = OPEN_DATA_CONFIRMATION_DATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpenDataConfirmationPerson() <em>Open Data Confirmation Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenDataConfirmationPerson()
	 * @generated
	 * @ordered
	 */
	protected static final String OPEN_DATA_CONFIRMATION_PERSON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpenDataConfirmationPerson() <em>Open Data Confirmation Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenDataConfirmationPerson()
	 * @generated
	 * @ordered
	 */
	protected String openDataConfirmationPerson = OPEN_DATA_CONFIRMATION_PERSON_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RunwayImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.RUNWAY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDesignator() {
		return designator;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDesignator(String newDesignator) {
		String oldDesignator = designator;
		designator = newDesignator;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__DESIGNATOR, oldDesignator, designator));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLengthM() {
		return lengthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLengthM(Double newLengthM) {
		Double oldLengthM = lengthM;
		lengthM = newLengthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__LENGTH_M, oldLengthM, lengthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWidthM() {
		return widthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidthM(Double newWidthM) {
		Double oldWidthM = widthM;
		widthM = newWidthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__WIDTH_M, oldWidthM, widthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getCodeNumber() {
		return codeNumber;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCodeNumber(Integer newCodeNumber) {
		Integer oldCodeNumber = codeNumber;
		codeNumber = newCodeNumber;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__CODE_NUMBER, oldCodeNumber, codeNumber));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSurface() {
		return surface;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSurface(String newSurface) {
		String oldSurface = surface;
		surface = newSurface;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__SURFACE, oldSurface, surface));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getPaved() {
		return paved;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPaved(Boolean newPaved) {
		Boolean oldPaved = paved;
		paved = newPaved;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__PAVED, oldPaved, paved));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getStripLengthM() {
		return stripLengthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStripLengthM(Double newStripLengthM) {
		Double oldStripLengthM = stripLengthM;
		stripLengthM = newStripLengthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__STRIP_LENGTH_M, oldStripLengthM, stripLengthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getStripWidthM() {
		return stripWidthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStripWidthM(Double newStripWidthM) {
		Double oldStripWidthM = stripWidthM;
		stripWidthM = newStripWidthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__STRIP_WIDTH_M, oldStripWidthM, stripWidthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ProfilePoint> getCentreLine() {
		if (centreLine == null) {
			centreLine = new EObjectContainmentEList<ProfilePoint>(ProfilePoint.class, this, SlopewrightPackage.RUNWAY__CENTRE_LINE);
		}
		return centreLine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<RunwayEnd> getEnds() {
		if (ends == null) {
			ends = new EObjectContainmentEList<RunwayEnd>(RunwayEnd.class, this, SlopewrightPackage.RUNWAY__ENDS);
		}
		return ends;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getObjectFreeWidthM() {
		return objectFreeWidthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setObjectFreeWidthM(Double newObjectFreeWidthM) {
		Double oldObjectFreeWidthM = objectFreeWidthM;
		objectFreeWidthM = newObjectFreeWidthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__OBJECT_FREE_WIDTH_M, oldObjectFreeWidthM, objectFreeWidthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getObjectFreeSource() {
		return objectFreeSource;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setObjectFreeSource(String newObjectFreeSource) {
		String oldObjectFreeSource = objectFreeSource;
		objectFreeSource = newObjectFreeSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__OBJECT_FREE_SOURCE, oldObjectFreeSource, objectFreeSource));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOpenDataSource() {
		return openDataSource;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpenDataSource(String newOpenDataSource) {
		String oldOpenDataSource = openDataSource;
		openDataSource = newOpenDataSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__OPEN_DATA_SOURCE, oldOpenDataSource, openDataSource));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOpenDataLicence() {
		return openDataLicence;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpenDataLicence(String newOpenDataLicence) {
		String oldOpenDataLicence = openDataLicence;
		openDataLicence = newOpenDataLicence;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__OPEN_DATA_LICENCE, oldOpenDataLicence, openDataLicence));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOpenDataConfirmation() {
		return openDataConfirmation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpenDataConfirmation(String newOpenDataConfirmation) {
		String oldOpenDataConfirmation = openDataConfirmation;
		openDataConfirmation = newOpenDataConfirmation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION, oldOpenDataConfirmation, openDataConfirmation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOpenDataConfirmationDate() {
		return openDataConfirmationDate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpenDataConfirmationDate(String newOpenDataConfirmationDate) {
		String oldOpenDataConfirmationDate = openDataConfirmationDate;
		openDataConfirmationDate = newOpenDataConfirmationDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION_DATE, oldOpenDataConfirmationDate, openDataConfirmationDate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOpenDataConfirmationPerson() {
		return openDataConfirmationPerson;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpenDataConfirmationPerson(String newOpenDataConfirmationPerson) {
		String oldOpenDataConfirmationPerson = openDataConfirmationPerson;
		openDataConfirmationPerson = newOpenDataConfirmationPerson;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION_PERSON, oldOpenDataConfirmationPerson, openDataConfirmationPerson));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SlopewrightPackage.RUNWAY__CENTRE_LINE:
				return ((InternalEList<?>)getCentreLine()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.RUNWAY__ENDS:
				return ((InternalEList<?>)getEnds()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.RUNWAY__DESIGNATOR:
				return getDesignator();
			case SlopewrightPackage.RUNWAY__LENGTH_M:
				return getLengthM();
			case SlopewrightPackage.RUNWAY__WIDTH_M:
				return getWidthM();
			case SlopewrightPackage.RUNWAY__CODE_NUMBER:
				return getCodeNumber();
			case SlopewrightPackage.RUNWAY__SURFACE:
				return getSurface();
			case SlopewrightPackage.RUNWAY__PAVED:
				return getPaved();
			case SlopewrightPackage.RUNWAY__STRIP_LENGTH_M:
				return getStripLengthM();
			case SlopewrightPackage.RUNWAY__STRIP_WIDTH_M:
				return getStripWidthM();
			case SlopewrightPackage.RUNWAY__CENTRE_LINE:
				return getCentreLine();
			case SlopewrightPackage.RUNWAY__ENDS:
				return getEnds();
			case SlopewrightPackage.RUNWAY__OBJECT_FREE_WIDTH_M:
				return getObjectFreeWidthM();
			case SlopewrightPackage.RUNWAY__OBJECT_FREE_SOURCE:
				return getObjectFreeSource();
			case SlopewrightPackage.RUNWAY__OPEN_DATA_SOURCE:
				return getOpenDataSource();
			case SlopewrightPackage.RUNWAY__OPEN_DATA_LICENCE:
				return getOpenDataLicence();
			case SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION:
				return getOpenDataConfirmation();
			case SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION_DATE:
				return getOpenDataConfirmationDate();
			case SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION_PERSON:
				return getOpenDataConfirmationPerson();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SlopewrightPackage.RUNWAY__DESIGNATOR:
				setDesignator((String)newValue);
				return;
			case SlopewrightPackage.RUNWAY__LENGTH_M:
				setLengthM((Double)newValue);
				return;
			case SlopewrightPackage.RUNWAY__WIDTH_M:
				setWidthM((Double)newValue);
				return;
			case SlopewrightPackage.RUNWAY__CODE_NUMBER:
				setCodeNumber((Integer)newValue);
				return;
			case SlopewrightPackage.RUNWAY__SURFACE:
				setSurface((String)newValue);
				return;
			case SlopewrightPackage.RUNWAY__PAVED:
				setPaved((Boolean)newValue);
				return;
			case SlopewrightPackage.RUNWAY__STRIP_LENGTH_M:
				setStripLengthM((Double)newValue);
				return;
			case SlopewrightPackage.RUNWAY__STRIP_WIDTH_M:
				setStripWidthM((Double)newValue);
				return;
			case SlopewrightPackage.RUNWAY__CENTRE_LINE:
				getCentreLine().clear();
				getCentreLine().addAll((Collection<? extends ProfilePoint>)newValue);
				return;
			case SlopewrightPackage.RUNWAY__ENDS:
				getEnds().clear();
				getEnds().addAll((Collection<? extends RunwayEnd>)newValue);
				return;
			case SlopewrightPackage.RUNWAY__OBJECT_FREE_WIDTH_M:
				setObjectFreeWidthM((Double)newValue);
				return;
			case SlopewrightPackage.RUNWAY__OBJECT_FREE_SOURCE:
				setObjectFreeSource((String)newValue);
				return;
			case SlopewrightPackage.RUNWAY__OPEN_DATA_SOURCE:
				setOpenDataSource((String)newValue);
				return;
			case SlopewrightPackage.RUNWAY__OPEN_DATA_LICENCE:
				setOpenDataLicence((String)newValue);
				return;
			case SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION:
				setOpenDataConfirmation((String)newValue);
				return;
			case SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION_DATE:
				setOpenDataConfirmationDate((String)newValue);
				return;
			case SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION_PERSON:
				setOpenDataConfirmationPerson((String)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case SlopewrightPackage.RUNWAY__DESIGNATOR:
				setDesignator(DESIGNATOR_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__LENGTH_M:
				setLengthM(LENGTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__WIDTH_M:
				setWidthM(WIDTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__CODE_NUMBER:
				setCodeNumber(CODE_NUMBER_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__SURFACE:
				setSurface(SURFACE_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__PAVED:
				setPaved(PAVED_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__STRIP_LENGTH_M:
				setStripLengthM(STRIP_LENGTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__STRIP_WIDTH_M:
				setStripWidthM(STRIP_WIDTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__CENTRE_LINE:
				getCentreLine().clear();
				return;
			case SlopewrightPackage.RUNWAY__ENDS:
				getEnds().clear();
				return;
			case SlopewrightPackage.RUNWAY__OBJECT_FREE_WIDTH_M:
				setObjectFreeWidthM(OBJECT_FREE_WIDTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__OBJECT_FREE_SOURCE:
				setObjectFreeSource(OBJECT_FREE_SOURCE_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__OPEN_DATA_SOURCE:
				setOpenDataSource(OPEN_DATA_SOURCE_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__OPEN_DATA_LICENCE:
				setOpenDataLicence(OPEN_DATA_LICENCE_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION:
				setOpenDataConfirmation(OPEN_DATA_CONFIRMATION_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION_DATE:
				setOpenDataConfirmationDate(OPEN_DATA_CONFIRMATION_DATE_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION_PERSON:
				setOpenDataConfirmationPerson(OPEN_DATA_CONFIRMATION_PERSON_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case SlopewrightPackage.RUNWAY__DESIGNATOR:
				return DESIGNATOR_EDEFAULT == null ? designator != null : !DESIGNATOR_EDEFAULT.equals(designator);
			case SlopewrightPackage.RUNWAY__LENGTH_M:
				return LENGTH_M_EDEFAULT == null ? lengthM != null : !LENGTH_M_EDEFAULT.equals(lengthM);
			case SlopewrightPackage.RUNWAY__WIDTH_M:
				return WIDTH_M_EDEFAULT == null ? widthM != null : !WIDTH_M_EDEFAULT.equals(widthM);
			case SlopewrightPackage.RUNWAY__CODE_NUMBER:
				return CODE_NUMBER_EDEFAULT == null ? codeNumber != null : !CODE_NUMBER_EDEFAULT.equals(codeNumber);
			case SlopewrightPackage.RUNWAY__SURFACE:
				return SURFACE_EDEFAULT == null ? surface != null : !SURFACE_EDEFAULT.equals(surface);
			case SlopewrightPackage.RUNWAY__PAVED:
				return PAVED_EDEFAULT == null ? paved != null : !PAVED_EDEFAULT.equals(paved);
			case SlopewrightPackage.RUNWAY__STRIP_LENGTH_M:
				return STRIP_LENGTH_M_EDEFAULT == null ? stripLengthM != null : !STRIP_LENGTH_M_EDEFAULT.equals(stripLengthM);
			case SlopewrightPackage.RUNWAY__STRIP_WIDTH_M:
				return STRIP_WIDTH_M_EDEFAULT == null ? stripWidthM != null : !STRIP_WIDTH_M_EDEFAULT.equals(stripWidthM);
			case SlopewrightPackage.RUNWAY__CENTRE_LINE:
				return centreLine != null && !centreLine.isEmpty();
			case SlopewrightPackage.RUNWAY__ENDS:
				return ends != null && !ends.isEmpty();
			case SlopewrightPackage.RUNWAY__OBJECT_FREE_WIDTH_M:
				return OBJECT_FREE_WIDTH_M_EDEFAULT == null ? objectFreeWidthM != null : !OBJECT_FREE_WIDTH_M_EDEFAULT.equals(objectFreeWidthM);
			case SlopewrightPackage.RUNWAY__OBJECT_FREE_SOURCE:
				return OBJECT_FREE_SOURCE_EDEFAULT == null ? objectFreeSource != null : !OBJECT_FREE_SOURCE_EDEFAULT.equals(objectFreeSource);
			case SlopewrightPackage.RUNWAY__OPEN_DATA_SOURCE:
				return OPEN_DATA_SOURCE_EDEFAULT == null ? openDataSource != null : !OPEN_DATA_SOURCE_EDEFAULT.equals(openDataSource);
			case SlopewrightPackage.RUNWAY__OPEN_DATA_LICENCE:
				return OPEN_DATA_LICENCE_EDEFAULT == null ? openDataLicence != null : !OPEN_DATA_LICENCE_EDEFAULT.equals(openDataLicence);
			case SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION:
				return OPEN_DATA_CONFIRMATION_EDEFAULT == null ? openDataConfirmation != null : !OPEN_DATA_CONFIRMATION_EDEFAULT.equals(openDataConfirmation);
			case SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION_DATE:
				return OPEN_DATA_CONFIRMATION_DATE_EDEFAULT == null ? openDataConfirmationDate != null : !OPEN_DATA_CONFIRMATION_DATE_EDEFAULT.equals(openDataConfirmationDate);
			case SlopewrightPackage.RUNWAY__OPEN_DATA_CONFIRMATION_PERSON:
				return OPEN_DATA_CONFIRMATION_PERSON_EDEFAULT == null ? openDataConfirmationPerson != null : !OPEN_DATA_CONFIRMATION_PERSON_EDEFAULT.equals(openDataConfirmationPerson);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (designator: ");
		result.append(designator);
		result.append(", lengthM: ");
		result.append(lengthM);
		result.append(", widthM: ");
		result.append(widthM);
		result.append(", codeNumber: ");
		result.append(codeNumber);
		result.append(", surface: ");
		result.append(surface);
		result.append(", paved: ");
		result.append(paved);
		result.append(", stripLengthM: ");
		result.append(stripLengthM);
		result.append(", stripWidthM: ");
		result.append(stripWidthM);
		result.append(", objectFreeWidthM: ");
		result.append(objectFreeWidthM);
		result.append(", objectFreeSource: ");
		result.append(objectFreeSource);
		result.append(", openDataSource: ");
		result.append(openDataSource);
		result.append(", openDataLicence: ");
		result.append(openDataLicence);
		result.append(", openDataConfirmation: ");
		result.append(openDataConfirmation);
		result.append(", openDataConfirmationDate: ");
		result.append(openDataConfirmationDate);
		result.append(", openDataConfirmationPerson: ");
		result.append(openDataConfirmationPerson);
		result.append(')');
		return result.toString();
	}

} //RunwayImpl
