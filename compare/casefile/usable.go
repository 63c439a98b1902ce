package casefile

import (
	"fmt"

	"gopkg.in/yaml.v3"
)

// scalar reports whether a node is a single value.
func (r *reader) scalar(p place) bool {
	if !r.usable(p.path, p.node) {
		return false
	}
	return p.node.Kind == yaml.ScalarNode || r.refuse(p, "")
}

// list gives the items of a list. Its length is limited, as what is laid over the
// year takes time with every item.
func (r *reader) list(p place) ([]*yaml.Node, bool) {
	if !r.usable(p.path, p.node) {
		return nil, false
	}
	if p.node.Kind != yaml.SequenceNode {
		return nil, r.refuse(p, "")
	}
	if n := len(p.node.Content); p.key.Most > 0 && n > p.key.Most {
		r.say(p, fmt.Sprintf("has %d items, allowed up to %d: make the list shorter", n, p.key.Most))
		return nil, false
	}
	return p.node.Content, true
}

// usable refuses what YAML offers beyond plain values.
func (r *reader) usable(path string, n *yaml.Node) bool {
	text := ""
	switch {
	case n.Kind == yaml.AliasNode:
		text = fmt.Sprintf("refers to %s elsewhere in the file: write the value itself", shown("*"+n.Value))
	case n.Anchor != "":
		text = fmt.Sprintf("carries the mark %s: a case has no references, write the value alone", shown("&"+n.Anchor))
	case n.Style&yaml.TaggedStyle != 0:
		text = fmt.Sprintf("carries the tag %s: write the value alone", shown(n.Tag))
	case n.Kind == yaml.ScalarNode && n.Tag == "!!null":
		text = "has no value: give one, or leave the key out"
	default:
		return true
	}
	r.add(positionOf(n), path, text)
	return false
}
