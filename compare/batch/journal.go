package batch

import (
	"bufio"
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"sync"
)

// Journal keeps finished rows in a file, a line of JSON each, and makes each durable
// before the next is begun. Only one process may use it at a time. A line that was
// torn when a process died is cut off.
type Journal struct {
	mu   sync.Mutex
	file *os.File
	end  int64
	at   map[string]extent // by row key
	old  map[string]extent // of homes that failed in an earlier run
}

type extent struct {
	from   int64
	length int
}

// entry is a line of the journal.
type entry struct {
	Key string `json:"key"`
	outcome
}

// OpenJournal opens a journal, or begins one.
func OpenJournal(path string) (*Journal, error) {
	file, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE, 0o666)
	if err != nil {
		return nil, fmt.Errorf("the journal of finished homes cannot be opened: %w", err)
	}
	j := &Journal{file: file, at: map[string]extent{}, old: map[string]extent{}}
	if err := j.load(); err != nil {
		return nil, errors.Join(fmt.Errorf("the journal %s cannot be read: %w", path, err), file.Close())
	}
	return j, nil
}

// load notes where each row stands. Homes that failed are tried again: most cost
// nothing, and the reason names the line in which the home stands now.
func (j *Journal) load() error {
	in := bufio.NewReaderSize(j.file, 1<<16)
	for {
		text, err := in.ReadBytes('\n')
		if errors.Is(err, io.EOF) {
			return j.file.Truncate(j.end)
		}
		if err != nil {
			return err
		}
		var e entry
		if json.Unmarshal(text, &e) == nil && e.Key != "" && e.sound() {
			in := j.at
			if e.Error != "" {
				in = j.old
			}
			in[e.Key] = extent{j.end, len(text)}
		}
		j.end += int64(len(text))
	}
}

// Empty reports whether no row stands in the journal.
func (j *Journal) Empty() bool {
	j.mu.Lock()
	defer j.mu.Unlock()
	return j.end == 0
}

// Close closes the file. It stays, unless nothing stands in it.
func (j *Journal) Close() error {
	err := j.file.Close()
	if j.Empty() {
		err = errors.Join(err, os.Remove(j.file.Name()))
	}
	return err
}

// has reports whether a row is finished.
func (j *Journal) has(key string) bool {
	j.mu.Lock()
	defer j.mu.Unlock()
	_, there := j.at[key]
	return there
}

// put adds a finished row.
func (j *Journal) put(key string, o outcome) error {
	text, err := line(entry{key, o})
	if err != nil {
		return err
	}
	j.mu.Lock()
	defer j.mu.Unlock()
	if at, is := j.old[key]; is && j.holds(at, text) {
		j.at[key] = at // it failed as before
		return nil
	}
	if _, err := j.file.WriteAt(text, j.end); err != nil {
		return fmt.Errorf("the journal of finished homes cannot be written: %w", err)
	}
	if err := j.file.Sync(); err != nil {
		return fmt.Errorf("the journal of finished homes cannot be made durable: %w", err)
	}
	j.at[key] = extent{j.end, len(text)}
	j.end += int64(len(text))
	return nil
}

// holds reports whether a line stands at a place.
func (j *Journal) holds(at extent, text []byte) bool {
	there := make([]byte, at.length)
	_, err := j.file.ReadAt(there, at.from)
	return err == nil && bytes.Equal(there, text)
}

// get reads a finished row back.
func (j *Journal) get(key string) (outcome, error) {
	j.mu.Lock()
	at, there := j.at[key]
	j.mu.Unlock()
	if !there {
		return outcome{}, errors.New("the journal lacks a home that was finished")
	}
	text := make([]byte, at.length)
	if _, err := j.file.ReadAt(text, at.from); err != nil {
		return outcome{}, fmt.Errorf("the journal cannot be read back: %w", err)
	}
	var e entry
	if err := json.Unmarshal(text, &e); err != nil {
		return outcome{}, fmt.Errorf("the journal was changed while it was in use: %w", err)
	}
	return e.outcome, nil
}
