/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Runway</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.Runway#getDesignator <em>Designator</em>}</li>
 *   <li>{@link slopewright.model.Runway#getLengthM <em>Length M</em>}</li>
 *   <li>{@link slopewright.model.Runway#getWidthM <em>Width M</em>}</li>
 *   <li>{@link slopewright.model.Runway#getCodeNumber <em>Code Number</em>}</li>
 *   <li>{@link slopewright.model.Runway#getSurface <em>Surface</em>}</li>
 *   <li>{@link slopewright.model.Runway#getPaved <em>Paved</em>}</li>
 *   <li>{@link slopewright.model.Runway#getStripLengthM <em>Strip Length M</em>}</li>
 *   <li>{@link slopewright.model.Runway#getStripWidthM <em>Strip Width M</em>}</li>
 *   <li>{@link slopewright.model.Runway#getCentreLine <em>Centre Line</em>}</li>
 *   <li>{@link slopewright.model.Runway#getEnds <em>Ends</em>}</li>
 *   <li>{@link slopewright.model.Runway#getObjectFreeWidthM <em>Object Free Width M</em>}</li>
 *   <li>{@link slopewright.model.Runway#getObjectFreeSource <em>Object Free Source</em>}</li>
 *   <li>{@link slopewright.model.Runway#getOpenDataSource <em>Open Data Source</em>}</li>
 *   <li>{@link slopewright.model.Runway#getOpenDataLicence <em>Open Data Licence</em>}</li>
 *   <li>{@link slopewright.model.Runway#getOpenDataConfirmation <em>Open Data Confirmation</em>}</li>
 *   <li>{@link slopewright.model.Runway#getOpenDataConfirmationDate <em>Open Data Confirmation Date</em>}</li>
 *   <li>{@link slopewright.model.Runway#getOpenDataConfirmationPerson <em>Open Data Confirmation Person</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getRunway()
 * @model
 * @generated
 */
public interface Runway extends Named {
	/**
	 * Returns the value of the '<em><b>Designator</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Designator</em>' attribute.
	 * @see #setDesignator(String)
	 * @see slopewright.model.SlopewrightPackage#getRunway_Designator()
	 * @model
	 * @generated
	 */
	String getDesignator();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getDesignator <em>Designator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Designator</em>' attribute.
	 * @see #getDesignator()
	 * @generated
	 */
	void setDesignator(String value);

	/**
	 * Returns the value of the '<em><b>Length M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Length M</em>' attribute.
	 * @see #setLengthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getRunway_LengthM()
	 * @model
	 * @generated
	 */
	Double getLengthM();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getLengthM <em>Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length M</em>' attribute.
	 * @see #getLengthM()
	 * @generated
	 */
	void setLengthM(Double value);

	/**
	 * Returns the value of the '<em><b>Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width M</em>' attribute.
	 * @see #setWidthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getRunway_WidthM()
	 * @model
	 * @generated
	 */
	Double getWidthM();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getWidthM <em>Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width M</em>' attribute.
	 * @see #getWidthM()
	 * @generated
	 */
	void setWidthM(Double value);

	/**
	 * Returns the value of the '<em><b>Code Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code Number</em>' attribute.
	 * @see #setCodeNumber(Integer)
	 * @see slopewright.model.SlopewrightPackage#getRunway_CodeNumber()
	 * @model
	 * @generated
	 */
	Integer getCodeNumber();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getCodeNumber <em>Code Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Code Number</em>' attribute.
	 * @see #getCodeNumber()
	 * @generated
	 */
	void setCodeNumber(Integer value);

	/**
	 * Returns the value of the '<em><b>Surface</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Surface</em>' attribute.
	 * @see #setSurface(String)
	 * @see slopewright.model.SlopewrightPackage#getRunway_Surface()
	 * @model
	 * @generated
	 */
	String getSurface();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getSurface <em>Surface</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Surface</em>' attribute.
	 * @see #getSurface()
	 * @generated
	 */
	void setSurface(String value);

	/**
	 * Returns the value of the '<em><b>Paved</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Paved</em>' attribute.
	 * @see #setPaved(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getRunway_Paved()
	 * @model
	 * @generated
	 */
	Boolean getPaved();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getPaved <em>Paved</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Paved</em>' attribute.
	 * @see #getPaved()
	 * @generated
	 */
	void setPaved(Boolean value);

	/**
	 * Returns the value of the '<em><b>Strip Length M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Strip Length M</em>' attribute.
	 * @see #setStripLengthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getRunway_StripLengthM()
	 * @model
	 * @generated
	 */
	Double getStripLengthM();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getStripLengthM <em>Strip Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strip Length M</em>' attribute.
	 * @see #getStripLengthM()
	 * @generated
	 */
	void setStripLengthM(Double value);

	/**
	 * Returns the value of the '<em><b>Strip Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Strip Width M</em>' attribute.
	 * @see #setStripWidthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getRunway_StripWidthM()
	 * @model
	 * @generated
	 */
	Double getStripWidthM();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getStripWidthM <em>Strip Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strip Width M</em>' attribute.
	 * @see #getStripWidthM()
	 * @generated
	 */
	void setStripWidthM(Double value);

	/**
	 * Returns the value of the '<em><b>Centre Line</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.ProfilePoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Centre Line</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getRunway_CentreLine()
	 * @model containment="true"
	 * @generated
	 */
	EList<ProfilePoint> getCentreLine();

	/**
	 * Returns the value of the '<em><b>Ends</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.RunwayEnd}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ends</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getRunway_Ends()
	 * @model containment="true"
	 * @generated
	 */
	EList<RunwayEnd> getEnds();

	/**
	 * Returns the value of the '<em><b>Object Free Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Object Free Width M</em>' attribute.
	 * @see #setObjectFreeWidthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getRunway_ObjectFreeWidthM()
	 * @model
	 * @generated
	 */
	Double getObjectFreeWidthM();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getObjectFreeWidthM <em>Object Free Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Object Free Width M</em>' attribute.
	 * @see #getObjectFreeWidthM()
	 * @generated
	 */
	void setObjectFreeWidthM(Double value);

	/**
	 * Returns the value of the '<em><b>Object Free Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Object Free Source</em>' attribute.
	 * @see #setObjectFreeSource(String)
	 * @see slopewright.model.SlopewrightPackage#getRunway_ObjectFreeSource()
	 * @model
	 * @generated
	 */
	String getObjectFreeSource();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getObjectFreeSource <em>Object Free Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Object Free Source</em>' attribute.
	 * @see #getObjectFreeSource()
	 * @generated
	 */
	void setObjectFreeSource(String value);

	/**
	 * Returns the value of the '<em><b>Open Data Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Open Data Source</em>' attribute.
	 * @see #setOpenDataSource(String)
	 * @see slopewright.model.SlopewrightPackage#getRunway_OpenDataSource()
	 * @model
	 * @generated
	 */
	String getOpenDataSource();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getOpenDataSource <em>Open Data Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Open Data Source</em>' attribute.
	 * @see #getOpenDataSource()
	 * @generated
	 */
	void setOpenDataSource(String value);

	/**
	 * Returns the value of the '<em><b>Open Data Licence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Open Data Licence</em>' attribute.
	 * @see #setOpenDataLicence(String)
	 * @see slopewright.model.SlopewrightPackage#getRunway_OpenDataLicence()
	 * @model
	 * @generated
	 */
	String getOpenDataLicence();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getOpenDataLicence <em>Open Data Licence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Open Data Licence</em>' attribute.
	 * @see #getOpenDataLicence()
	 * @generated
	 */
	void setOpenDataLicence(String value);

	/**
	 * Returns the value of the '<em><b>Open Data Confirmation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Open Data Confirmation</em>' attribute.
	 * @see #setOpenDataConfirmation(String)
	 * @see slopewright.model.SlopewrightPackage#getRunway_OpenDataConfirmation()
	 * @model
	 * @generated
	 */
	String getOpenDataConfirmation();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getOpenDataConfirmation <em>Open Data Confirmation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Open Data Confirmation</em>' attribute.
	 * @see #getOpenDataConfirmation()
	 * @generated
	 */
	void setOpenDataConfirmation(String value);

	/**
	 * Returns the value of the '<em><b>Open Data Confirmation Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Open Data Confirmation Date</em>' attribute.
	 * @see #setOpenDataConfirmationDate(String)
	 * @see slopewright.model.SlopewrightPackage#getRunway_OpenDataConfirmationDate()
	 * @model
	 * @generated
	 */
	String getOpenDataConfirmationDate();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getOpenDataConfirmationDate <em>Open Data Confirmation Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Open Data Confirmation Date</em>' attribute.
	 * @see #getOpenDataConfirmationDate()
	 * @generated
	 */
	void setOpenDataConfirmationDate(String value);

	/**
	 * Returns the value of the '<em><b>Open Data Confirmation Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Open Data Confirmation Person</em>' attribute.
	 * @see #setOpenDataConfirmationPerson(String)
	 * @see slopewright.model.SlopewrightPackage#getRunway_OpenDataConfirmationPerson()
	 * @model
	 * @generated
	 */
	String getOpenDataConfirmationPerson();

	/**
	 * Sets the value of the '{@link slopewright.model.Runway#getOpenDataConfirmationPerson <em>Open Data Confirmation Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Open Data Confirmation Person</em>' attribute.
	 * @see #getOpenDataConfirmationPerson()
	 * @generated
	 */
	void setOpenDataConfirmationPerson(String value);

} // Runway
