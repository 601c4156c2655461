package main

import (
	"fmt"
	"net"
	"net/http"
	"os"
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
	return http.Serve(l, http.FileServer(http.Dir(dist)))
}
