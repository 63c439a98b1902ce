//go:build !linux

package outdir

import "errors"

// exchange is not offered by this system's standard calls; two renames are used
// instead.
func exchange(_, _ string) error { return errors.ErrUnsupported }
