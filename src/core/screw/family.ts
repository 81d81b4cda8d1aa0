// The sizes of a screw's family, rising.
import { formatSize, type Size } from './size';
import { threadTable } from './thread';
