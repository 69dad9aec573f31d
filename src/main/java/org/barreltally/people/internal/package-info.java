/** How passwords and secrets are kept and looked up; closed to other packages. */
package org.barreltally.people.internal;
