package main

import (
	"compress/gzip"
	"fmt"
	"mime"
	"net"
	"net/http"
	"os"
	"path"
	"path/filepath"
	"strings"
)

// serve offers dist/ on this machine only, at the port in PORT or any free one.
func serve() error {
	port := os.Getenv("PORT")
	if port == "" {
		port = "0"
	}
	l, err := net.Listen("tcp", "127.0.0.1:"+port)
	if err != nil {
		return err
	}
	fmt.Printf("Suncask is at http://%s/ (stop with Ctrl-C)\n", l.Addr())
	return http.Serve(l, zipped(http.FileServer(http.Dir(dist))))
}

// zipped compresses what it serves, as hosts do.
func zipped(files http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if !strings.Contains(r.Header.Get("Accept-Encoding"), "gzip") || strings.HasSuffix(r.URL.Path, ".gz") {
			files.ServeHTTP(w, r)
			return
		}
		r.Header.Del("Range")
		if ready := r.URL.Path + ".gz"; exists(ready) { // compressed when the site was built
			w.Header().Set("Content-Encoding", "gzip")
			w.Header().Set("Content-Type", mime.TypeByExtension(path.Ext(r.URL.Path)))
			r.URL.Path = ready
			files.ServeHTTP(w, r)
			return
		}
		zip := gzip.NewWriter(w)
		defer zip.Close()
		files.ServeHTTP(&zippedWriter{w, zip}, r)
	})
}

// exists tells whether dist/ has a file.
func exists(name string) bool {
	info, err := os.Stat(filepath.Join(dist, path.Clean("/"+name)))
	return err == nil && info.Mode().IsRegular()
}

type zippedWriter struct {
	http.ResponseWriter
	zip *gzip.Writer
}

func (w *zippedWriter) WriteHeader(code int) {
	w.Header().Del("Content-Length")
	w.Header().Set("Content-Encoding", "gzip")
	w.ResponseWriter.WriteHeader(code)
}

func (w *zippedWriter) Write(b []byte) (int, error) { return w.zip.Write(b) }
