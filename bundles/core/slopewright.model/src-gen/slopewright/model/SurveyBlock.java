/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Survey Block</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.SurveyBlock#getKind <em>Kind</em>}</li>
 *   <li>{@link slopewright.model.SurveyBlock#getPath <em>Path</em>}</li>
 *   <li>{@link slopewright.model.SurveyBlock#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link slopewright.model.SurveyBlock#getPointCount <em>Point Count</em>}</li>
 *   <li>{@link slopewright.model.SurveyBlock#getHorizontalAccuracyM <em>Horizontal Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.SurveyBlock#getVerticalAccuracyM <em>Vertical Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.SurveyBlock#getSource <em>Source</em>}</li>
 *   <li>{@link slopewright.model.SurveyBlock#getDate <em>Date</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getSurveyBlock()
 * @model
 * @generated
 */
public interface SurveyBlock extends Named {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(String)
	 * @see slopewright.model.SlopewrightPackage#getSurveyBlock_Kind()
	 * @model
	 * @generated
	 */
	String getKind();

	/**
	 * Sets the value of the '{@link slopewright.model.SurveyBlock#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(String value);

	/**
	 * Returns the value of the '<em><b>Path</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Path</em>' attribute.
	 * @see #setPath(String)
	 * @see slopewright.model.SlopewrightPackage#getSurveyBlock_Path()
	 * @model
	 * @generated
	 */
	String getPath();

	/**
	 * Sets the value of the '{@link slopewright.model.SurveyBlock#getPath <em>Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Path</em>' attribute.
	 * @see #getPath()
	 * @generated
	 */
	void setPath(String value);

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see slopewright.model.SlopewrightPackage#getSurveyBlock_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link slopewright.model.SurveyBlock#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

	/**
	 * Returns the value of the '<em><b>Point Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Point Count</em>' attribute.
	 * @see #setPointCount(Integer)
	 * @see slopewright.model.SlopewrightPackage#getSurveyBlock_PointCount()
	 * @model
	 * @generated
	 */
	Integer getPointCount();

	/**
	 * Sets the value of the '{@link slopewright.model.SurveyBlock#getPointCount <em>Point Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Point Count</em>' attribute.
	 * @see #getPointCount()
	 * @generated
	 */
	void setPointCount(Integer value);

	/**
	 * Returns the value of the '<em><b>Horizontal Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Horizontal Accuracy M</em>' attribute.
	 * @see #setHorizontalAccuracyM(Double)
	 * @see slopewright.model.SlopewrightPackage#getSurveyBlock_HorizontalAccuracyM()
	 * @model
	 * @generated
	 */
	Double getHorizontalAccuracyM();

	/**
	 * Sets the value of the '{@link slopewright.model.SurveyBlock#getHorizontalAccuracyM <em>Horizontal Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Horizontal Accuracy M</em>' attribute.
	 * @see #getHorizontalAccuracyM()
	 * @generated
	 */
	void setHorizontalAccuracyM(Double value);

	/**
	 * Returns the value of the '<em><b>Vertical Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vertical Accuracy M</em>' attribute.
	 * @see #setVerticalAccuracyM(Double)
	 * @see slopewright.model.SlopewrightPackage#getSurveyBlock_VerticalAccuracyM()
	 * @model
	 * @generated
	 */
	Double getVerticalAccuracyM();

	/**
	 * Sets the value of the '{@link slopewright.model.SurveyBlock#getVerticalAccuracyM <em>Vertical Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vertical Accuracy M</em>' attribute.
	 * @see #getVerticalAccuracyM()
	 * @generated
	 */
	void setVerticalAccuracyM(Double value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see slopewright.model.SlopewrightPackage#getSurveyBlock_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link slopewright.model.SurveyBlock#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(String)
	 * @see slopewright.model.SlopewrightPackage#getSurveyBlock_Date()
	 * @model
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link slopewright.model.SurveyBlock#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

} // SurveyBlock
