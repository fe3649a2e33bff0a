/** A panel over the page: Escape or a press beside it closes, focus comes back to where it was. */
import type { ReactNode } from "react";
import { Button, Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";

interface PanelProps {
  readonly title: string;
  readonly open: boolean;
  readonly onOpenChange: (open: boolean) => void;
  readonly children: ReactNode;
}

export function Panel({ title, open, onOpenChange, children }: PanelProps) {
  return (
    <ModalOverlay className="panel-ground" isDismissable isOpen={open} onOpenChange={onOpenChange}>
      <Modal className="panel">
        <Dialog className="panel-inside">
          <div className="panel-head">
            <Heading slot="title">{title}</Heading>
            <Button slot="close" className="button">
              Close
            </Button>
          </div>
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
