/**
 * What stages of a build made, kept in a folder beside the outputs for the next run: values written as bytes, found again
 * by the digest of all that they depend on. What the values mean is not known here.
 */
package org.adumbrate.delivery.kept;
