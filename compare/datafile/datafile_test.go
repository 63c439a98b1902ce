package datafile

import "testing"

// The digest of "abc" is the example of FIPS 180-2, appendix B.1.
func TestDigest(t *testing.T) {
	const want = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
	if got := Digest([]byte("abc")); got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}

func TestReferringAnew(t *testing.T) {
	f := File{SHA256: "stated"}
	f.Refer("x.epw")
	if f.Name != "x.epw" || f.SHA256 != "stated" || f.Read() || !f.Stated() {
		t.Errorf("a digest that stands before the name is lost: %+v", f)
	}
	f.Data, f.Warnings = []byte{}, []string{"w"}
	f.Refer("y.epw")
	if f.Name != "y.epw" || f.SHA256 != "" || f.Read() || f.Warnings != nil {
		t.Errorf("something of the first file is left: %+v", f)
	}
}
