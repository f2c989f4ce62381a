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

import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Obstacle</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getPlaces <em>Places</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getTopElevationM <em>Top Elevation M</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getHorizontalAccuracyM <em>Horizontal Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getVerticalAccuracyM <em>Vertical Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getLighted <em>Lighted</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getShielded <em>Shielded</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getShieldedBy <em>Shielded By</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getShieldingStudy <em>Shielding Study</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getShieldingStudyDate <em>Shielding Study Date</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getShieldingStudyPerson <em>Shielding Study Person</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getTemporary <em>Temporary</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getSource <em>Source</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleImpl#getDate <em>Date</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ObstacleImpl extends NamedImpl implements Obstacle {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final ObstacleKind KIND_EDEFAULT = ObstacleKind.POINT;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected ObstacleKind kind = KIND_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPlaces() <em>Places</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlaces()
	 * @generated
	 * @ordered
	 */
	protected EList<Place> places;

	/**
	 * The default value of the '{@link #getTopElevationM() <em>Top Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTopElevationM()
	 * @generated
	 * @ordered
	 */
	protected static final Double TOP_ELEVATION_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTopElevationM() <em>Top Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTopElevationM()
	 * @generated
	 * @ordered
	 */
	protected Double topElevationM = TOP_ELEVATION_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getHorizontalAccuracyM() <em>Horizontal Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHorizontalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected static final Double HORIZONTAL_ACCURACY_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHorizontalAccuracyM() <em>Horizontal Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHorizontalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected Double horizontalAccuracyM = HORIZONTAL_ACCURACY_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getVerticalAccuracyM() <em>Vertical Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerticalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected static final Double VERTICAL_ACCURACY_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVerticalAccuracyM() <em>Vertical Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerticalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected Double verticalAccuracyM = VERTICAL_ACCURACY_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getLighted() <em>Lighted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLighted()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean LIGHTED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLighted() <em>Lighted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLighted()
	 * @generated
	 * @ordered
	 */
	protected Boolean lighted = LIGHTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getShielded() <em>Shielded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShielded()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean SHIELDED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getShielded() <em>Shielded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShielded()
	 * @generated
	 * @ordered
	 */
	protected Boolean shielded = SHIELDED_EDEFAULT;

	/**
	 * The cached value of the '{@link #getShieldedBy() <em>Shielded By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShieldedBy()
	 * @generated
	 * @ordered
	 */
	protected Obstacle shieldedBy;

	/**
	 * The default value of the '{@link #getShieldingStudy() <em>Shielding Study</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShieldingStudy()
	 * @generated
	 * @ordered
	 */
	protected static final String SHIELDING_STUDY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getShieldingStudy() <em>Shielding Study</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShieldingStudy()
	 * @generated
	 * @ordered
	 */
	protected String shieldingStudy = SHIELDING_STUDY_EDEFAULT;

	/**
	 * The default value of the '{@link #getShieldingStudyDate() <em>Shielding Study Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShieldingStudyDate()
	 * @generated
	 * @ordered
	 */
	protected static final String SHIELDING_STUDY_DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getShieldingStudyDate() <em>Shielding Study Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShieldingStudyDate()
	 * @generated
	 * @ordered
	 */
	protected String shieldingStudyDate = SHIELDING_STUDY_DATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getShieldingStudyPerson() <em>Shielding Study Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShieldingStudyPerson()
	 * @generated
	 * @ordered
	 */
	protected static final String SHIELDING_STUDY_PERSON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getShieldingStudyPerson() <em>Shielding Study Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShieldingStudyPerson()
	 * @generated
	 * @ordered
	 */
	protected String shieldingStudyPerson = SHIELDING_STUDY_PERSON_EDEFAULT;

	/**
	 * The default value of the '{@link #getTemporary() <em>Temporary</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemporary()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean TEMPORARY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTemporary() <em>Temporary</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemporary()
	 * @generated
	 * @ordered
	 */
	protected Boolean temporary = TEMPORARY_EDEFAULT;

	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected static final String DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected String date = DATE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ObstacleImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.OBSTACLE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ObstacleKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(ObstacleKind newKind) {
		ObstacleKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Place> getPlaces() {
		if (places == null) {
			places = new EObjectContainmentEList<Place>(Place.class, this, SlopewrightPackage.OBSTACLE__PLACES);
		}
		return places;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTopElevationM() {
		return topElevationM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTopElevationM(Double newTopElevationM) {
		Double oldTopElevationM = topElevationM;
		topElevationM = newTopElevationM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__TOP_ELEVATION_M, oldTopElevationM, topElevationM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHorizontalAccuracyM() {
		return horizontalAccuracyM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHorizontalAccuracyM(Double newHorizontalAccuracyM) {
		Double oldHorizontalAccuracyM = horizontalAccuracyM;
		horizontalAccuracyM = newHorizontalAccuracyM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__HORIZONTAL_ACCURACY_M, oldHorizontalAccuracyM, horizontalAccuracyM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getVerticalAccuracyM() {
		return verticalAccuracyM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVerticalAccuracyM(Double newVerticalAccuracyM) {
		Double oldVerticalAccuracyM = verticalAccuracyM;
		verticalAccuracyM = newVerticalAccuracyM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__VERTICAL_ACCURACY_M, oldVerticalAccuracyM, verticalAccuracyM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getLighted() {
		return lighted;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLighted(Boolean newLighted) {
		Boolean oldLighted = lighted;
		lighted = newLighted;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__LIGHTED, oldLighted, lighted));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getShielded() {
		return shielded;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShielded(Boolean newShielded) {
		Boolean oldShielded = shielded;
		shielded = newShielded;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__SHIELDED, oldShielded, shielded));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Obstacle getShieldedBy() {
		if (shieldedBy != null && shieldedBy.eIsProxy()) {
			InternalEObject oldShieldedBy = (InternalEObject)shieldedBy;
			shieldedBy = (Obstacle)eResolveProxy(oldShieldedBy);
			if (shieldedBy != oldShieldedBy) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, SlopewrightPackage.OBSTACLE__SHIELDED_BY, oldShieldedBy, shieldedBy));
			}
		}
		return shieldedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Obstacle basicGetShieldedBy() {
		return shieldedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShieldedBy(Obstacle newShieldedBy) {
		Obstacle oldShieldedBy = shieldedBy;
		shieldedBy = newShieldedBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__SHIELDED_BY, oldShieldedBy, shieldedBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getShieldingStudy() {
		return shieldingStudy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShieldingStudy(String newShieldingStudy) {
		String oldShieldingStudy = shieldingStudy;
		shieldingStudy = newShieldingStudy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__SHIELDING_STUDY, oldShieldingStudy, shieldingStudy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getShieldingStudyDate() {
		return shieldingStudyDate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShieldingStudyDate(String newShieldingStudyDate) {
		String oldShieldingStudyDate = shieldingStudyDate;
		shieldingStudyDate = newShieldingStudyDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__SHIELDING_STUDY_DATE, oldShieldingStudyDate, shieldingStudyDate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getShieldingStudyPerson() {
		return shieldingStudyPerson;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShieldingStudyPerson(String newShieldingStudyPerson) {
		String oldShieldingStudyPerson = shieldingStudyPerson;
		shieldingStudyPerson = newShieldingStudyPerson;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__SHIELDING_STUDY_PERSON, oldShieldingStudyPerson, shieldingStudyPerson));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getTemporary() {
		return temporary;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTemporary(Boolean newTemporary) {
		Boolean oldTemporary = temporary;
		temporary = newTemporary;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__TEMPORARY, oldTemporary, temporary));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource) {
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDate() {
		return date;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(String newDate) {
		String oldDate = date;
		date = newDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SlopewrightPackage.OBSTACLE__PLACES:
				return ((InternalEList<?>)getPlaces()).basicRemove(otherEnd, msgs);
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
			case SlopewrightPackage.OBSTACLE__KIND:
				return getKind();
			case SlopewrightPackage.OBSTACLE__PLACES:
				return getPlaces();
			case SlopewrightPackage.OBSTACLE__TOP_ELEVATION_M:
				return getTopElevationM();
			case SlopewrightPackage.OBSTACLE__HORIZONTAL_ACCURACY_M:
				return getHorizontalAccuracyM();
			case SlopewrightPackage.OBSTACLE__VERTICAL_ACCURACY_M:
				return getVerticalAccuracyM();
			case SlopewrightPackage.OBSTACLE__LIGHTED:
				return getLighted();
			case SlopewrightPackage.OBSTACLE__SHIELDED:
				return getShielded();
			case SlopewrightPackage.OBSTACLE__SHIELDED_BY:
				if (resolve) return getShieldedBy();
				return basicGetShieldedBy();
			case SlopewrightPackage.OBSTACLE__SHIELDING_STUDY:
				return getShieldingStudy();
			case SlopewrightPackage.OBSTACLE__SHIELDING_STUDY_DATE:
				return getShieldingStudyDate();
			case SlopewrightPackage.OBSTACLE__SHIELDING_STUDY_PERSON:
				return getShieldingStudyPerson();
			case SlopewrightPackage.OBSTACLE__TEMPORARY:
				return getTemporary();
			case SlopewrightPackage.OBSTACLE__SOURCE:
				return getSource();
			case SlopewrightPackage.OBSTACLE__DATE:
				return getDate();
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
			case SlopewrightPackage.OBSTACLE__KIND:
				setKind((ObstacleKind)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__PLACES:
				getPlaces().clear();
				getPlaces().addAll((Collection<? extends Place>)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__TOP_ELEVATION_M:
				setTopElevationM((Double)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__HORIZONTAL_ACCURACY_M:
				setHorizontalAccuracyM((Double)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__VERTICAL_ACCURACY_M:
				setVerticalAccuracyM((Double)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__LIGHTED:
				setLighted((Boolean)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__SHIELDED:
				setShielded((Boolean)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__SHIELDED_BY:
				setShieldedBy((Obstacle)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__SHIELDING_STUDY:
				setShieldingStudy((String)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__SHIELDING_STUDY_DATE:
				setShieldingStudyDate((String)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__SHIELDING_STUDY_PERSON:
				setShieldingStudyPerson((String)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__TEMPORARY:
				setTemporary((Boolean)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__SOURCE:
				setSource((String)newValue);
				return;
			case SlopewrightPackage.OBSTACLE__DATE:
				setDate((String)newValue);
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
			case SlopewrightPackage.OBSTACLE__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE__PLACES:
				getPlaces().clear();
				return;
			case SlopewrightPackage.OBSTACLE__TOP_ELEVATION_M:
				setTopElevationM(TOP_ELEVATION_M_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE__HORIZONTAL_ACCURACY_M:
				setHorizontalAccuracyM(HORIZONTAL_ACCURACY_M_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE__VERTICAL_ACCURACY_M:
				setVerticalAccuracyM(VERTICAL_ACCURACY_M_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE__LIGHTED:
				setLighted(LIGHTED_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE__SHIELDED:
				setShielded(SHIELDED_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE__SHIELDED_BY:
				setShieldedBy((Obstacle)null);
				return;
			case SlopewrightPackage.OBSTACLE__SHIELDING_STUDY:
				setShieldingStudy(SHIELDING_STUDY_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE__SHIELDING_STUDY_DATE:
				setShieldingStudyDate(SHIELDING_STUDY_DATE_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE__SHIELDING_STUDY_PERSON:
				setShieldingStudyPerson(SHIELDING_STUDY_PERSON_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE__TEMPORARY:
				setTemporary(TEMPORARY_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE__DATE:
				setDate(DATE_EDEFAULT);
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
			case SlopewrightPackage.OBSTACLE__KIND:
				return kind != KIND_EDEFAULT;
			case SlopewrightPackage.OBSTACLE__PLACES:
				return places != null && !places.isEmpty();
			case SlopewrightPackage.OBSTACLE__TOP_ELEVATION_M:
				return TOP_ELEVATION_M_EDEFAULT == null ? topElevationM != null : !TOP_ELEVATION_M_EDEFAULT.equals(topElevationM);
			case SlopewrightPackage.OBSTACLE__HORIZONTAL_ACCURACY_M:
				return HORIZONTAL_ACCURACY_M_EDEFAULT == null ? horizontalAccuracyM != null : !HORIZONTAL_ACCURACY_M_EDEFAULT.equals(horizontalAccuracyM);
			case SlopewrightPackage.OBSTACLE__VERTICAL_ACCURACY_M:
				return VERTICAL_ACCURACY_M_EDEFAULT == null ? verticalAccuracyM != null : !VERTICAL_ACCURACY_M_EDEFAULT.equals(verticalAccuracyM);
			case SlopewrightPackage.OBSTACLE__LIGHTED:
				return LIGHTED_EDEFAULT == null ? lighted != null : !LIGHTED_EDEFAULT.equals(lighted);
			case SlopewrightPackage.OBSTACLE__SHIELDED:
				return SHIELDED_EDEFAULT == null ? shielded != null : !SHIELDED_EDEFAULT.equals(shielded);
			case SlopewrightPackage.OBSTACLE__SHIELDED_BY:
				return shieldedBy != null;
			case SlopewrightPackage.OBSTACLE__SHIELDING_STUDY:
				return SHIELDING_STUDY_EDEFAULT == null ? shieldingStudy != null : !SHIELDING_STUDY_EDEFAULT.equals(shieldingStudy);
			case SlopewrightPackage.OBSTACLE__SHIELDING_STUDY_DATE:
				return SHIELDING_STUDY_DATE_EDEFAULT == null ? shieldingStudyDate != null : !SHIELDING_STUDY_DATE_EDEFAULT.equals(shieldingStudyDate);
			case SlopewrightPackage.OBSTACLE__SHIELDING_STUDY_PERSON:
				return SHIELDING_STUDY_PERSON_EDEFAULT == null ? shieldingStudyPerson != null : !SHIELDING_STUDY_PERSON_EDEFAULT.equals(shieldingStudyPerson);
			case SlopewrightPackage.OBSTACLE__TEMPORARY:
				return TEMPORARY_EDEFAULT == null ? temporary != null : !TEMPORARY_EDEFAULT.equals(temporary);
			case SlopewrightPackage.OBSTACLE__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case SlopewrightPackage.OBSTACLE__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", topElevationM: ");
		result.append(topElevationM);
		result.append(", horizontalAccuracyM: ");
		result.append(horizontalAccuracyM);
		result.append(", verticalAccuracyM: ");
		result.append(verticalAccuracyM);
		result.append(", lighted: ");
		result.append(lighted);
		result.append(", shielded: ");
		result.append(shielded);
		result.append(", shieldingStudy: ");
		result.append(shieldingStudy);
		result.append(", shieldingStudyDate: ");
		result.append(shieldingStudyDate);
		result.append(", shieldingStudyPerson: ");
		result.append(shieldingStudyPerson);
		result.append(", temporary: ");
		result.append(temporary);
		result.append(", source: ");
		result.append(source);
		result.append(", date: ");
		result.append(date);
		result.append(')');
		return result.toString();
	}

} //ObstacleImpl
