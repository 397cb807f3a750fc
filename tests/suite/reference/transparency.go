// Reads a log of attempts with the libraries of Go's checksum database, which the
// format of tiles comes from: golang.org/x/mod/sumdb/tlog and note. It checks the
// signature, the root by all tiles, every entry's place, and that each smaller
// tree is the start of this one.
//
// Arguments: the log's folder and its verifier key.
package main

import (
	"encoding/binary"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"golang.org/x/mod/sumdb/note"
	"golang.org/x/mod/sumdb/tlog"
)

type folder string

func (f folder) Height() int                           { return 8 }
func (f folder) SaveTiles(_ []tlog.Tile, _ [][]byte)   {}
func (f folder) ReadTiles(t []tlog.Tile) ([][]byte, error) {
	var all [][]byte
	for _, tile := range t {
		// The library has the height in its paths (tile/8/...), C2SP does not.
		data, err := os.ReadFile(filepath.Join(string(f), "tile", strings.TrimPrefix(tile.Path(), "tile/8/")))
		if err != nil {
			return nil, err
		}
		all = append(all, data)
	}
	return all, nil
}

func must(err error) {
	if err != nil {
		fmt.Println("wrong:", err)
		os.Exit(1)
	}
}

func main() {
	f := folder(os.Args[1])
	key, err := note.NewVerifier(os.Args[2])
	must(err)
	text, err := os.ReadFile(filepath.Join(string(f), "checkpoint"))
	must(err)
	signed, err := note.Open(text, note.VerifierList(key))
	must(err)
	lines := strings.Split(signed.Text, "\n")
	size, err := strconv.ParseInt(lines[1], 10, 64)
	must(err)
	root, err := tlog.ParseHash(lines[2])
	must(err)
	tree := tlog.Tree{N: size, Hash: root}
	reader := tlog.TileHashReader(tree, f)
	for n := int64(0); n < size; n += 256 {
		tile := tlog.Tile{H: 8, L: 0, N: n / 256, W: 256}
		if size-n < 256 {
			tile.W = int(size - n)
		}
		name := strings.Replace(tile.Path(), "tile/8/0/", "tile/entries/", 1)
		data, err := os.ReadFile(filepath.Join(string(f), name))
		must(err)
		for i := n; i < n+int64(tile.W); i++ {
			length := int(binary.BigEndian.Uint16(data))
			entry := data[2 : 2+length]
			data = data[2+length:]
			proof, err := tlog.ProveRecord(size, i, reader)
			must(err)
			must(tlog.CheckRecord(proof, size, root, i, tlog.RecordHash(entry)))
			earlier, err := tlog.TreeHash(i+1, reader)
			must(err)
			consistent, err := tlog.ProveTree(size, i+1, reader)
			must(err)
			must(tlog.CheckTree(consistent, size, root, i+1, earlier))
		}
	}
	fmt.Println("holds", size)
}
